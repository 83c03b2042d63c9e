// Tells the server that a page of its own asks: a form of another site can't send this.
export const own = { "X-Lab-Page": "own" };
