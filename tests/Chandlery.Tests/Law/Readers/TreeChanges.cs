using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Readers;

/// <summary>Every slip that is tried on a file: each field left out, misspelt, out of bounds, of another form, or twice.</summary>
/// <param name="misspellsKeys">Whether keys are misspelt too: where they are names that another file knows.</param>
internal sealed partial class TreeChanges(bool misspellsKeys)
{
    private const string Nonsense = "zzzz";

    // Rows of a list are read alike: what was tried in one is not tried in the next.
    private readonly HashSet<string> tried = [];

    /// <summary>All slips of a file, in the order of its fields.</summary>
    public IEnumerable<TreeChange> Of(YamlMap tree) => OfMap(tree, "", t => (YamlMap)t);

    private IEnumerable<TreeChange> Of(YamlValue value, string where, Func<YamlValue, YamlMap> put) =>
        value switch
        {
            YamlMap map => OfMap(map, where, put),
            YamlList list => OfList(list, where, put),
            _ => IsNew(where + " text") ? OfScalar((YamlScalar)value, where, put) : [],
        };

    private IEnumerable<TreeChange> OfMap(YamlMap map, string where, Func<YamlValue, YamlMap> put)
    {
        if (IsNew(where + " map"))
        {
            var unknown = new YamlEntry(Nonsense, map.Place, new YamlScalar("1", false, map.Place));
            yield return new TreeChange(where, $"+ {Nonsense}: 1", put(map with { Entries = [.. map.Entries, unknown] }));
        }

        for (int i = 0; i < map.Entries.Count; i++)
        {
            YamlEntry entry = map.Entries[i];
            string inner = where.Length == 0 ? entry.Key : $"{where}.{entry.Key}";
            int at = i;
            YamlMap With(params YamlEntry[] instead) => put(map with { Entries = [.. Instead(map.Entries, at, instead)] });
            if (IsNew(inner + " field"))
            {
                yield return new TreeChange(inner, "left out", With());
                if (misspellsKeys)
                {
                    yield return new TreeChange(inner, $"as {entry.Key}q", With(entry with { Key = entry.Key + "q" }));
                }
            }

            foreach (TreeChange change in Of(entry.Value, inner, v => With(entry with { Value = v })))
            {
                yield return change;
            }
        }
    }

    private IEnumerable<TreeChange> OfList(YamlList list, string where, Func<YamlValue, YamlMap> put)
    {
        YamlMap With(IEnumerable<YamlValue> items) => put(list with { Items = [.. items] });
        if (IsNew(where + " list"))
        {
            yield return new TreeChange(where, "= []", With([]));
            yield return new TreeChange(where, "+ a list", With(list.Items.Append(new YamlList([], list.Place))));
            yield return new TreeChange(where, "+ the first again", With(list.Items.Concat(list.Items.Take(1))));
        }

        for (int i = 0; i < list.Items.Count; i++)
        {
            int at = i;
            foreach (TreeChange change in Of(list.Items[i], $"{where}[{i}]", v => With(Instead(list.Items, at, [v]))))
            {
                yield return change;
            }
        }
    }

    private bool IsNew(string where) => tried.Add(Row().Replace(where, ""));

    private static IEnumerable<TreeChange> OfScalar(YamlScalar scalar, string where, Func<YamlValue, YamlMap> put)
    {
        bool isNumber = double.TryParse(scalar.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
        string[] texts = isNumber ? ["-99999999", "7"] : [Nonsense, scalar.Text[..^1]];
        foreach (string text in texts)
        {
            yield return new TreeChange(where, $"= {text}", put(scalar with { Text = text }));
        }

        yield return new TreeChange(where, "= a list", put(new YamlList([scalar], scalar.Place)));
    }

    private static IEnumerable<T> Instead<T>(IReadOnlyList<T> all, int at, IEnumerable<T> instead) =>
        all.Take(at).Concat(instead).Concat(all.Skip(at + 1));

    [GeneratedRegex(@"\[[0-9]+\]")]
    private static partial Regex Row();
}
