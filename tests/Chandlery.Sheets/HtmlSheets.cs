using System.Globalization;
using System.Text;

namespace Chandlery.Sheets;

/// <summary>How an HTML sheet sets its ingredients.</summary>
public enum HtmlForm
{
    Grid,
    Stacked,
    Plain,
    List,
    Airy,
}

/// <summary>Corpus sheets as HTML, for LibreOffice and Chromium to print.</summary>
public static class HtmlSheets
{
    public static string Write(Truth t, Tongue l, HtmlForm form, int shareStyle)
    {
        var html = new StringBuilder();
        string size = form == HtmlForm.Stacked ? "A4 landscape" : "A4";
        html.Append(
            $$"""
            <!DOCTYPE html><html lang="{{l.Code}}"><head><meta charset="utf-8"><title>{{E(t.Name)}}</title><style>
            @page { size: {{size}}; margin: 22mm 16mm 20mm 16mm }
            body { font: 9pt "Liberation Sans", sans-serif } h2 { font-size: 11pt; background: #dde } h3 { font-size: 9.5pt }
            table { border-collapse: collapse; width: 100% } td, th { padding: 2px 4px; text-align: left; font-size: 8pt; vertical-align: {{(
                form == HtmlForm.Plain ? "middle" : "top"
            )}} }
            tr { break-inside: avoid } .grid td, .grid th { border: 1px solid #333 } .plain tr:nth-child(even) td { background: #eee } .plain td { padding: 5px 6px }
            .airy td { padding: 4px 9px 8px 0; font-family: "Liberation Serif", serif; font-size: 9pt } .airy th { padding-right: 9px; border-bottom: 1px solid #000 }
            .foot { position: fixed; bottom: 0; left: 0; font-size: 7pt } .block { margin-bottom: 7px }
            </style></head><body>
            """
        );
        if (form is HtmlForm.Plain or HtmlForm.List or HtmlForm.Airy)
        {
            html.Append($"<div class=\"foot\">{E(t.Name)} - {l.Version} {t.Version}</div>");
        }

        string date = t.Revised.ToString(l.DateFormat, CultureInfo.InvariantCulture);
        html.Append(
            $"<p>&nbsp;</p><p><b>{l.Title}</b></p><p>{l.Document} {t.Document} &nbsp; {l.Version} {t.Version} &nbsp; {l.Revised}: {date}</p>"
        );
        for (int s = 1; s <= 16; s++)
        {
            html.Append($"<h2>{l.Section} {s}: {E(l.Sections[s - 1])}</h2>");
            switch (s)
            {
                case 1:
                    html.Append($"<h3>1.1</h3><table><tr><td width=\"30%\">{l.Name}</td><td>{E(t.Name)}</td></tr></table>");
                    html.Append($"<h3>1.3</h3><table><tr><td width=\"30%\">{l.Supplier}:</td><td>{E(t.Supplier)}</td></tr></table>");
                    break;
                case 2:
                    html.Append(
                        $"<h3>2.1 {l.Classification}</h3><p>{string.Join("<br>", t.Classes.Select(E))}</p><h3>2.2 {l.Label}</h3><p>GHS07</p>"
                    );
                    break;
                case 3:
                    html.Append(form == HtmlForm.List ? Blocks(t, l, shareStyle) : Table(t, l, form, shareStyle));
                    html.Append($"<p>{l.FullText}</p>");
                    break;
                case 9:
                    html.Append(
                        $"<table><tr><td width=\"40%\">{l.Flash}</td><td>{(t.FlashIsLowerBound ? "&gt; " : "")}{l.Number(t.FlashCelsius)} °C ({l.ClosedCup})</td></tr><tr><td>{l.Density}</td><td>{l.Number(t.Density)} g/cm³ (20 °C)</td></tr></table>"
                    );
                    break;
                default:
                    html.Append($"<h3>{s}.1</h3><p>- - -</p>");
                    break;
            }
        }

        return html.Append("</body></html>").ToString();
    }

    /// <summary>An IFRA certificate.</summary>
    public static string Ifra(Truth t)
    {
        var rows = new StringBuilder();
        foreach ((string category, string limit) in t.IfraLimits())
        {
            string shown = char.IsDigit(limit[0]) ? limit + " %" : char.ToUpperInvariant(limit[0]) + limit[1..];
            rows.Append($"<tr><td>Category {category}</td><td>{E(Products(category))}</td><td>{shown}</td></tr>");
        }

        return $"""
            <!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>IFRA</title><style>@page {"{"} size: A4; margin: 20mm {"}"} body {"{"} font: 10pt "Liberation Sans" {"}"} td, th {"{"} border: 1px solid #555; padding: 3px; text-align: left {"}"}</style></head><body>
            <h1>Certificate of conformity to the IFRA Standards</h1><p>Certificate no. IF-{t.Document}</p><p>Date: {t.Revised:yyyy-MM-dd}</p>
            <p>Product name: {E(
                t.Name
            )}</p><p>We certify that this oil meets the IFRA Standards up to the 51st Amendment at these levels.</p>
            <table><tr><th>IFRA category</th><th>Product types</th><th>Maximum level of use</th></tr>{rows}</table></body></html>
            """;
    }

    /// <summary>An allergen statement: the exact share of every allergen of the table.</summary>
    public static string Allergens(Truth t)
    {
        var rows = new StringBuilder();
        foreach ((TruthIngredient i, int at) in t.Ingredients.Take(6).Select((i, at) => (i, at)))
        {
            rows.Append($"<tr><td>{E(i.Name)}</td><td>{i.Cas}</td><td>{Truth.Figure(Math.Round(0.1 + (at * 0.15), 2))}</td></tr>");
        }

        return $"""
            <!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>Allergens</title><style>@page {"{"} size: A4; margin: 20mm {"}"} body {"{"} font: 10pt "Liberation Sans" {"}"} td, th {"{"} border: 1px solid #555; padding: 3px; text-align: left {"}"}</style></head><body>
            <p>&nbsp;</p><p><b>Allergen statement</b></p><p>Product name: {E(t.Name)}</p><p>Date: {t.Revised:yyyy-MM-dd}</p>
            <table><tr><th>Fragrance allergen</th><th>CAS number</th><th>Content %</th></tr>{rows}</table></body></html>
            """;
    }

    private static string Products(string category) =>
        category switch
        {
            "1" => "Products for the lips",
            "4" => "Fine fragrance",
            "5A" => "Body lotion and the like, left on the body",
            "9" => "Rinsed off with some contact",
            "10A" => "Household care, no aerosols, with hand contact such as cleaners and laundry care of every kind",
            _ => "Without skin contact, candles among them",
        };

    private static string Table(Truth t, Tongue l, HtmlForm form, int style)
    {
        var html = new StringBuilder(
            $"<h3>3.2</h3><table {(form is HtmlForm.Grid or HtmlForm.Stacked ? "border=\"1\"" : "")} class=\"{form.ToString().ToLowerInvariant()}\"><thead><tr>"
        );
        string[] heads = form switch
        {
            HtmlForm.Grid => [l.ColumnName, l.ColumnCas, l.ColumnEc, l.ColumnShare, l.ColumnClasses, l.ColumnM],
            HtmlForm.Stacked => [l.ColumnName, l.ColumnShare, l.ColumnClasses, l.ColumnSpecial],
            HtmlForm.Plain => [l.ColumnName, $"{l.ColumnCas} / {l.ColumnEc}", l.ColumnShare, l.ColumnClasses],
            _ => [l.ColumnShare, l.ColumnCas, l.ColumnEc, l.ColumnName, l.ColumnClasses],
        };
        html.Append(string.Concat(heads.Select(h => $"<th>{h}</th>"))).Append("</tr></thead><tbody>");
        foreach ((TruthIngredient i, int at) in t.Ingredients.Select((i, at) => (i, at)))
        {
            string share = E(l.Share(i.Share, style));
            string classes = string.Join(
                form == HtmlForm.Plain ? "<br>" : "; ",
                i.Classes.Select(c => E(form == HtmlForm.Stacked ? c.Replace(",", " -", StringComparison.Ordinal) : c))
            );
            string[] cells = form switch
            {
                HtmlForm.Grid => [E(i.Name), i.Cas, i.Ec ?? "-", share, classes, M(i, l)],
                HtmlForm.Stacked =>
                [
                    $"{E(i.Name)}<br>{l.ColumnCas}: {i.Cas}<br>{(i.Ec is null ? "" : $"{l.ColumnEc}: {i.Ec}<br>")}{l.Reach}: 01-21194{at:00000}-{at % 90 + 10}",
                    share,
                    classes,
                    Special(i, l),
                ],
                HtmlForm.Plain => [E(i.Name), $"{i.Cas}<br>{i.Ec ?? ""}", share, classes + (M(i, l).Length > 0 ? "<br>" + M(i, l) : "")],
                _ => [share, i.Cas, i.Ec ?? "", E(i.Name), classes + (M(i, l).Length > 0 ? "; " + M(i, l) : "")],
            };
            html.Append("<tr>").Append(string.Concat(cells.Select(c => $"<td>{c}</td>"))).Append("</tr>");
        }

        return html.Append("</tbody></table>").ToString();
    }

    private static string Blocks(Truth t, Tongue l, int style)
    {
        var html = new StringBuilder("<h3>3.2</h3>");
        foreach (TruthIngredient i in t.Ingredients)
        {
            html.Append(
                $"<div class=\"block\">{l.ColumnName} : {E(i.Name)}<br>{l.ColumnCas} : {i.Cas}<br>{(i.Ec is null ? "" : $"{l.ColumnEc} : {i.Ec}<br>")}{l.ColumnShare.Split(' ')[0]} : {E(l.Share(i.Share, style))}<br>Classification : {string.Join(" ; ", i.Classes.Select(E))}{(M(i, l).Length > 0 ? "<br>" + M(i, l) : "")}</div>"
            );
        }

        return html.ToString();
    }

    public static string M(TruthIngredient i, Tongue l) =>
        string.Join(
            " ",
            new[]
            {
                i.AcuteM is { } a ? $"{l.M} ({l.Acute}) = {Truth.Figure(a)}" : "",
                i.ChronicM is { } c ? $"{l.M} ({l.Chronic}) = {Truth.Figure(c)}" : "",
            }.Where(x => x.Length > 0)
        );

    private static string Special(TruthIngredient i, Tongue l)
    {
        IEnumerable<string> lines = i
            .Limits.Select(x =>
                E(l.DecimalComma ? x.Replace("0.01", "0,01", StringComparison.Ordinal) : x).Replace("&gt;=", "≥", StringComparison.Ordinal)
            )
            .Append(M(i, l))
            .Append(i.OralMgPerKg is { } ate ? $"{l.Ate}: {Truth.Figure(ate)} mg/kg" : "");
        return string.Join("<br>", lines.Where(x => x.Length > 0));
    }

    private static string E(string text) => System.Net.WebUtility.HtmlEncode(text);
}
