/** The look of a sheet: black on white, small enough for two A4 pages at the kettle, with lines to write on. */
export const style: string = `
@page{size:A4;margin:8mm 11mm 10mm}
*{box-sizing:border-box}
body{margin:0;background:#fff;color:#000;font:10pt/1.35 Arial,"Liberation Sans",Helvetica,"DejaVu Sans",sans-serif}
main{max-width:190mm;margin:0 auto;padding:6mm}
h1{font-size:1.5em;margin:0 0 .3em}
h2{font-size:1.12em;margin:.5em 0 .15em;border-bottom:.5pt solid #000;break-after:avoid}
h3{font-size:1em;margin:.5em 0 .1em;break-after:avoid}
p,ul,table,figure{margin:.25em 0}
ul{padding-left:1.3em}
li{break-inside:avoid}
table{width:100%;border-collapse:collapse}
th,td{border:.5pt solid #777;padding:.12em .35em;text-align:left;vertical-align:top;overflow-wrap:break-word}
th{font-weight:600;background:#eee}
thead{display:table-header-group}
tr{break-inside:avoid}
.form td{height:5.6mm}
.form.dense td{height:4mm;line-height:1.1;padding-top:0;padding-bottom:0;vertical-align:middle}
.left{float:left;width:56%}
.right{margin-left:58%;width:42%}
.right th{width:50%}
.right td{height:26mm}
.right+*{clear:both}
.form td.empty div{width:12mm}
.form td.empty:last-child{width:15mm}
tbody tr:first-child:not(:last-child){break-after:avoid}
tbody tr:last-child:not(:first-child){break-before:avoid}
.figure{white-space:nowrap}
.small{font-size:.88em}
figure{break-inside:avoid}
figure svg{display:block;width:100%;height:auto}
figcaption{font-size:.9em}
@media screen and (max-width:700px){table{display:block;overflow-x:auto}}
@media print{
body{font-size:7.6pt;line-height:1.22}
main{max-width:none;padding:0}
h1.part{break-before:page}
th{background:none}
}
`;
