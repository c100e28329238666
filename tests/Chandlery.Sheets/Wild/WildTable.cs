using System.Globalization;

namespace Chandlery.Sheets.Wild;

/// <summary>The counts of the random corpus as DEVELOPERS.md shows them, seen and unseen side by side.</summary>
public static class WildTable
{
    private const string Heading = "printed | precision | recall | wrong, not marked | missing, not said |";
    private const string Line = "|---|---|---|---|---|---|";

    /// <summary>A line for each field.</summary>
    public static IEnumerable<string> Lines(WildScore seen, WildScore unseen)
    {
        yield return $"| documents | {seen.Documents} / {unseen.Documents} | | | | |";
        yield return $"| layouts | {seen.Layouts.Count} / {unseen.Layouts.Count} | | | | |";
        foreach (string field in seen.Fields.Keys.Union(unseen.Fields.Keys).Order(StringComparer.Ordinal))
        {
            yield return Row(field, Of(seen.Fields, field), Of(unseen.Fields, field));
        }
    }

    /// <summary>A line for each engine or each layout: all its values together.</summary>
    public static IEnumerable<string> Groups(
        string what,
        SortedDictionary<string, SortedDictionary<string, FieldCount>> seen,
        SortedDictionary<string, SortedDictionary<string, FieldCount>> unseen
    )
    {
        yield return $"| {what} | {Heading}";
        yield return Line;
        foreach (string group in seen.Keys.Union(unseen.Keys).Order(StringComparer.Ordinal))
        {
            yield return Row(group, Sum(seen, group), Sum(unseen, group));
        }
    }

    /// <summary>Layouts of one form together, whatever else varies in them; certificates and statements stay apart.</summary>
    public static SortedDictionary<string, SortedDictionary<string, FieldCount>> Forms(
        SortedDictionary<string, SortedDictionary<string, FieldCount>> layouts
    )
    {
        var forms = new SortedDictionary<string, SortedDictionary<string, FieldCount>>(StringComparer.Ordinal);
        foreach (var form in layouts.GroupBy(l => FormOf(l.Key)))
        {
            forms[form.Key] = new(
                form.SelectMany(l => l.Value).GroupBy(f => f.Key).ToDictionary(f => f.Key, f => Sum(f.Select(c => c.Value))),
                StringComparer.Ordinal
            );
        }

        return forms;
    }

    private static string FormOf(string layout) =>
        layout.StartsWith("IFRA", StringComparison.Ordinal) || layout.StartsWith("allergens", StringComparison.Ordinal)
            ? layout
            : layout.Split(' ')[0];

    /// <summary>A line for each field of each engine or layout.</summary>
    public static IEnumerable<string> Matrix(
        SortedDictionary<string, SortedDictionary<string, FieldCount>> seen,
        SortedDictionary<string, SortedDictionary<string, FieldCount>> unseen
    )
    {
        foreach (string group in seen.Keys.Union(unseen.Keys).Order(StringComparer.Ordinal))
        {
            yield return $"\n| {group} | {Heading}";
            yield return Line;
            SortedDictionary<string, FieldCount> one = seen.GetValueOrDefault(group) ?? [];
            SortedDictionary<string, FieldCount> other = unseen.GetValueOrDefault(group) ?? [];
            foreach (string field in one.Keys.Union(other.Keys).Order(StringComparer.Ordinal))
            {
                FieldCount s = Of(one, field);
                FieldCount u = Of(other, field);
                if (s.Printed + s.Drafted + u.Printed + u.Drafted > 0)
                {
                    yield return Row(field, s, u);
                }
            }
        }
    }

    private static FieldCount Of(SortedDictionary<string, FieldCount> fields, string field) =>
        fields.GetValueOrDefault(field) ?? new FieldCount();

    private static FieldCount Sum(SortedDictionary<string, SortedDictionary<string, FieldCount>> groups, string group) =>
        Sum((groups.GetValueOrDefault(group) ?? []).Where(f => f.Key != WildScore.WholeRows).Select(f => f.Value));

    private static FieldCount Sum(IEnumerable<FieldCount> all)
    {
        List<FieldCount> counts = [.. all];
        return new FieldCount
        {
            Printed = counts.Sum(c => c.Printed),
            Drafted = counts.Sum(c => c.Drafted),
            Right = counts.Sum(c => c.Right),
            Doubted = counts.Sum(c => c.Doubted),
            WrongUnmarked = counts.Sum(c => c.WrongUnmarked),
            MissingUnsaid = counts.Sum(c => c.MissingUnsaid),
        };
    }

    private static string Row(string name, FieldCount s, FieldCount u) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {s.Printed} / {u.Printed} | {100 * s.Precision:0.0} / {100 * u.Precision:0.0} % | {100 * s.Recall:0.0} / {100 * u.Recall:0.0} % | {s.WrongUnmarked} / {u.WrongUnmarked} | {s.MissingUnsaid} / {u.MissingUnsaid} |"
        );
}
