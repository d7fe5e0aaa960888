/**
 * Systems that are solved side by side. They share what joins the cells and differ in what each cell loses: humidity
 * and temperature move with the same air but meet other walls. Values of one cell stand together.
 */
export const LANES = 4;
