using System.Globalization;
using System.Text;
using Chandlery.Core.Asked.Substances;
using Chandlery.Core.Quantities;

namespace Chandlery.Cli;

/// <summary>What the law says of a substance, for people.</summary>
internal static class SubstanceText
{
    public static string Render(SubstanceAnswer a, string place, DateOnly day, bool inFolder)
    {
        var text = new StringBuilder();
        text.AppendLine(string.Join("; ", a.Names));
        Line(text, "CAS", a.Cas);
        Line(text, "EC", a.Ec);
        if (!a.Binds)
        {
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"  Harmonised classes are law of the European Union; they do not bind in {place}, where they are evidence beside what the supplier's sheet says."
            );
        }

        if (a.Index is null)
        {
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"  No harmonised classes on {day:yyyy-MM-dd}: what its supplier's sheet says counts."
            );
        }
        else
        {
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"  Index number {a.Index}, {a.Act} (CELEX {a.Celex}), applies from {a.AppliesFrom:yyyy-MM-dd}"
            );
            Line(text, "Only", a.Conditions);
            text.AppendLine("  Harmonised classes:");
            foreach (ClassAnswer c in a.Classes)
            {
                string more =
                    (c.Minimum ? "; a minimum: a more severe class goes before it" : "")
                    + (c.RouteOpen ? "; no route is named, for the table leaves it open" : "")
                    + (c.Computed ? "" : "; not computed by this program");
                text.AppendLine(CultureInfo.InvariantCulture, $"    {c.Class}{(c.Statement.Length == 0 ? "" : $", {c.Statement}")}{more}");
            }

            Line(text, "Limits", a.Limits);
            Line(
                text,
                "M-factors",
                [.. new[] { Factor("acute", a.MFactors.Acute), Factor("chronic", a.MFactors.Chronic) }.OfType<string>()]
            );
            Line(text, "Estimates", a.Ate);
            foreach (NoteAnswer note in a.Notes.Where(n => n.Means.Length > 0))
            {
                text.AppendLine(CultureInfo.InvariantCulture, $"  Note {note.Note}: {note.Means}.");
            }

            Line(text, "Other notes, not described here", [.. a.Notes.Where(n => n.Means.Length == 0).Select(n => n.Note)]);
        }

        Versions(text, "Before:", a.Before);
        Versions(text, $"In force in the European Union, not taken over in {place}:", a.Elsewhere);
        Versions(text, a.Binds ? "To come:" : "To come in the European Union:", a.Pending);
        if (inFolder)
        {
            text.AppendLine(a.HeldBy.Count == 0 ? "  Nothing of yours holds it." : "  Yours that hold it:");
            foreach (HolderAnswer holder in a.HeldBy)
            {
                text.AppendLine(CultureInfo.InvariantCulture, $"    {holder.Kind} {holder.Id} ({holder.Name}): {holder.Percent}");
                foreach (string difference in holder.Differences)
                {
                    text.AppendLine(CultureInfo.InvariantCulture, $"      {difference}");
                }
            }
        }

        foreach (string remark in a.Remarks)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"  Look: {remark}");
        }

        return text.ToString();
    }

    private static string? Factor(string which, double? value) => value is { } m ? $"{which} {Figures.Plain(m)}" : null;

    private static void Line(StringBuilder text, string head, IReadOnlyList<string> values)
    {
        if (values.Count > 0)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"  {head}: {string.Join("; ", values)}");
        }
    }

    private static void Versions(StringBuilder text, string head, IReadOnlyList<VersionAnswer> versions)
    {
        if (versions.Count == 0)
        {
            return;
        }

        text.AppendLine(CultureInfo.InvariantCulture, $"  {head}");
        foreach (VersionAnswer v in versions)
        {
            string when = v.AppliesFrom is { } day ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : "no day known";
            string limits = v.Limits.Count == 0 ? "" : $"[{string.Join("; ", v.Limits)}]";
            string[] parts = [string.Join("; ", v.Classes), limits, v.Says, $"({v.Act})"];
            text.AppendLine(CultureInfo.InvariantCulture, $"    {when}: {string.Join(' ', parts.Where(p => p.Length > 0))}");
        }
    }
}
