/** Where version 1 of the open API begins. What a program may rely on changes with the number only. */
export const API = "/api/v1";
