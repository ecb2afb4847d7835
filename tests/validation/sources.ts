/** Sources that print figures on more than one topic. */
export const CONSTRUCTION_LECTURES = "University of Florida construction lectures (Allen), 2014, notebooks of weeks 6 to 8 (damontallen/Construction-Lectures-Fall-2014)";
export const FORMWORK_FOR_CONCRETE_STRUCTURES = "Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed. (2010)";
export const TEMPORARY_WORKS_ASSIGNMENT = "University temporary-works assignment solution, wall form to CIRIA Report 108 (vbook.pub/documents/formwork-design-r2re9g0rgvw6)";
export const IS_456 = "IS 456:2000, as quoted on public pages (afrozcivil.com, veerbuildhouse.com, nischinth.com, civilsiteworks.blogspot.com)";
