// The page on which another device of the local network types the code that the terminal shows.

export const codePolicy = "default-src 'none'; style-src 'unsafe-inline'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

/** `said`: a sentence of ours, without a sign of HTML; may be empty. */
export const codePage = (said: string): string => `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Rampwright</title>
<style>
  body { margin: 24px auto; max-width: 420px; padding: 0 16px; font: 18px/1.4 Arial, sans-serif; color: #1b1f24; background: #fff; }
  input, button { box-sizing: border-box; width: 100%; min-height: 48px; margin: 8px 0; padding: 8px 12px; font: inherit; border: 1px solid #57606a; border-radius: 4px; }
  input { font-size: 24px; letter-spacing: 2px; }
</style>
<h1>Rampwright</h1>
<form method="post" action="/code">
  <label for="code">Code that the terminal shows, eight digits</label>
  <input id="code" name="code" inputmode="numeric" autocomplete="off" autofocus required>
  <button>Open the workbook</button>
</form>
<p role="alert">${said}</p>
<p>Planning aid only. The network carries what you see and type in the clear: use it where you trust the network.</p>
</html>
`;

/** Out of the form as it is sent. */
export const codeFrom = (body: string): string => new URLSearchParams(body).get('code') ?? '';
