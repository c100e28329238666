using System.Globalization;
using System.Security;
using System.Text;

namespace Chandlery.Sheets;

/// <summary>Corpus sheets as our own markup, in a layout that is not our own safety data sheet's.</summary>
public static class OwnSheets
{
    public static string Write(Truth t, Tongue l, int shareStyle)
    {
        var xml = new StringBuilder(
            $"<paper title=\"{X(t.Name)}\" lang=\"{l.Code}\" width=\"210\" height=\"297\" margin=\"16\" x-height=\"1.5\" smallest-x-height=\"1.5\">"
        );
        xml.Append(
            $"<p size=\"1.5\" weight=\"bold\">{l.Title}</p><p>{X(l.Document)} {X(t.Document)}  {l.Version} {t.Version}</p><p>{l.Revised}: {t.Revised.ToString(l.DateFormat, CultureInfo.InvariantCulture)}</p>"
        );
        for (int s = 1; s <= 16; s++)
        {
            xml.Append($"<gap size=\"0.6\"/><p size=\"1.2\" weight=\"bold\">{l.Section} {s}: {X(l.Sections[s - 1])}</p>");
            switch (s)
            {
                case 1:
                    xml.Append($"<p>{l.Name}: {X(t.Name)}</p><p>{l.Supplier}: {X(t.Supplier)}</p>");
                    break;
                case 2:
                    xml.Append(
                        $"<p>2.1 {l.Classification}</p>{string.Concat(t.Classes.Select(c => $"<p>{X(c)}</p>"))}<p>2.2 {X(l.Label)}</p><p>GHS07</p>"
                    );
                    break;
                case 3:
                    xml.Append(
                        $"<p>3.2</p><table widths=\"36 14 12 14 34\"><tr><th>{l.ColumnName}</th><th>{l.ColumnCas}</th><th>{l.ColumnEc}</th><th>{X(l.ColumnShare)}</th><th>{X(l.ColumnClasses)}</th></tr>"
                    );
                    foreach (TruthIngredient i in t.Ingredients)
                    {
                        string m = HtmlSheets.M(i, l);
                        xml.Append(
                            $"<tr><td>{X(i.Name)}</td><td>{i.Cas}</td><td>{i.Ec ?? "-"}</td><td>{X(l.Share(i.Share, shareStyle))}</td><td>{X(string.Join("; ", i.Classes) + (m.Length > 0 ? "; " + m : ""))}</td></tr>"
                        );
                    }

                    xml.Append($"</table><p>{X(l.FullText)}</p>");
                    break;
                case 9:
                    xml.Append(
                        $"<p>{X(l.Flash)}: {(t.FlashIsLowerBound ? "&gt; " : "")}{l.Number(t.FlashCelsius)} °C ({l.ClosedCup})</p><p>{X(l.Density)}: {l.Number(t.Density)} g/ml</p>"
                    );
                    break;
                default:
                    xml.Append($"<p>{s}.1 -</p>");
                    break;
            }
        }

        return xml.Append("</paper>").ToString();
    }

    private static string X(string text) => SecurityElement.Escape(text);
}
