/** The name of the one clock of the workbook: the cell with the day on which everything is judged. */
export const asOfName = 'as_of';
