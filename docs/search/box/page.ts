// Fetched when the box is opened first: everything that can be found, and the search over it.
import sections from "sections";
import { Finder } from "../finder.js";
import { shown } from "../found.js";

const finder = new Finder(sections);
window.gelwrightFind = (question) => shown(finder.find(question, 12));
