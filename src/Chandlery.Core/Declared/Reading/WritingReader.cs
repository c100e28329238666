using System.Text.RegularExpressions;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads how a declaration was written.</summary>
internal static partial class WritingReader
{
    /// <summary>What is confirmed, and which figures can be read in two ways.</summary>
    /// <param name="fields">The declaration's fields.</param>
    /// <param name="map">The same as it stands in the file.</param>
    public static Writing Read(Fields fields, YamlMap map) =>
        new(fields.Choices(ConfirmedShape.Confirmed.Key, ConfirmedShape.Names), [.. Marks(map)]);

    private static IEnumerable<Doubt> Marks(YamlValue value) =>
        value switch
        {
            YamlMap map => map.Entries.SelectMany(e => e.Value is YamlScalar scalar ? Mark(e.Key, scalar) : Marks(e.Value)),
            YamlList list => list.Items.SelectMany(Marks),
            _ => [],
        };

    private static IEnumerable<Doubt> Mark(string key, YamlScalar scalar)
    {
        if (ConfirmedShape.Amounts.Contains(key) && ThousandsMark().IsMatch(scalar.Text.Trim()))
        {
            string text = scalar.Text.Trim();
            yield return new Doubt(
                key,
                $"'{key}: {text}' is read as {text.TrimEnd('0').TrimEnd('.')}; with a thousands mark it would be {text.Replace(".", "", StringComparison.Ordinal)}.",
                scalar.Place
            );
        }
    }

    [GeneratedRegex("^[1-9][0-9]{0,2}[.][0-9]{3}$")]
    private static partial Regex ThousandsMark();
}
