using System.Globalization;

namespace Chandlery.Sheets.Wild;

/// <summary>The counts of the random corpus as DEVELOPERS.md shows them, seen and unseen side by side.</summary>
public static class WildTable
{
    public static IEnumerable<string> Lines(WildScore seen, WildScore unseen)
    {
        yield return $"| documents | {seen.Documents} / {unseen.Documents} | | | | |";
        yield return $"| layouts | {seen.Layouts.Count} / {unseen.Layouts.Count} | | | | |";
        foreach ((string field, FieldCount s) in seen.Fields)
        {
            FieldCount u = unseen.Fields[field];
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"| {field} | {s.Printed} / {u.Printed} | {100 * s.Precision:0.0} / {100 * u.Precision:0.0} % | {100 * s.Recall:0.0} / {100 * u.Recall:0.0} % | {s.WrongUnmarked} / {u.WrongUnmarked} | {s.MissingUnsaid} / {u.MissingUnsaid} |"
            );
        }
    }
}
