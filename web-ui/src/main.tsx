/** Starts the pages. */
import { render } from "preact";
import "./style.css";

const root = document.getElementById("app");
if (root) render(<h1>Rodcall</h1>, root);
