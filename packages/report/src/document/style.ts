import { ink } from '../picture/shape.js';

const widths = Array.from({ length: 20 }, (_, index) => `col.w${index + 1}{width:${(index + 1) * 5}%}`).join(
	'\n',
);

/**
 * The style sheet of a page: a plain sheet for the screen, A4 or Letter for paper. Table heads come again on each
 * page; a row, a box and a figure are never cut.
 */
export const style = `
:root{color-scheme:light}
*{box-sizing:border-box}
html{font:16px/1.45 "Noto Sans",system-ui,"Segoe UI",Roboto,"Liberation Sans",sans-serif;color:${ink.text};background:#fff;-webkit-text-size-adjust:100%}
body{margin:0}
main{max-width:52rem;margin:0 auto;padding:1rem 1.1rem 3rem;overflow-wrap:anywhere}
h1,h2,h3,h4{line-height:1.2;margin:1.6em 0 .5em;break-after:avoid}
h1{font-size:1.9rem;margin-top:.6em}
h2{font-size:1.45rem;border-bottom:2px solid ${ink.line};padding-bottom:.15em}
h3{font-size:1.2rem}
h4{font-size:1rem}
p{margin:.4em 0 .8em}
dl{margin:.4em 0 1em}
dl div{display:grid;grid-template-columns:minmax(7rem,13rem) 1fr;gap:.8rem;padding:.2em 0;border-bottom:1px solid ${ink.grid};break-inside:avoid}
dt{color:${ink.quiet}}
dd{margin:0}
table{width:100%;table-layout:fixed;border-collapse:collapse;margin:.6em 0 1.2em;font-size:.92rem}
th,td{text-align:left;vertical-align:top;padding:.35em .5em;border-bottom:1px solid ${ink.grid};font-weight:400}
thead th{border-bottom:2px solid ${ink.line};font-weight:700}
.number{text-align:right}
${widths}
ul,ol{margin:.4em 0 1em;padding-left:1.4em}
li{margin:.2em 0;break-inside:avoid}
.box{border:1.5px solid ${ink.line};padding:.6em .9em;margin:.8em 0;break-inside:avoid}
.box.strong{border-width:3px}
.box p{margin:.15em 0}
.box.strong p{font-weight:700}
.box .word{font-weight:700}
nav ol{list-style:none;padding-left:0}
figure{margin:1em 0;break-inside:avoid}
figure svg{display:block;max-width:100%;height:auto}
a{color:${ink.accent}}
@media screen and (max-width:40rem){
main{padding:.7rem .7rem 2rem}
dl div{grid-template-columns:1fr;gap:0}
table,tbody,tr,th,td{display:block;width:auto}
colgroup,thead{display:none}
tr{border-bottom:1px solid ${ink.line};padding:.4em 0}
th,td{border:0;padding:.1em 0}
tbody th{font-weight:700}
td:empty{display:none}
figure.wide{overflow-x:auto}
figure.wide svg{max-width:none}
td::before{content:attr(data-label) ": ";color:${ink.quiet}}
.number{text-align:left}
}
@media print{
html{font-size:10pt}
main{max-width:none;padding:0}
.page{break-before:page}
thead{display:table-header-group}
.few,tr{break-inside:avoid}
.lead{break-after:avoid}
p,li{orphans:2;widows:2}
figure svg{max-height:235mm;max-width:100%}
a{color:inherit;text-decoration:none}
}
@page{
margin:16mm 15mm 18mm;
@bottom-right{content:"page " counter(page) " of " counter(pages);font:9pt "Noto Sans",sans-serif}
}
`;
