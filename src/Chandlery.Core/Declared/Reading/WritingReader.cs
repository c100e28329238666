using System.Text.RegularExpressions;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads how a declaration was written.</summary>
internal static partial class WritingReader
{
    /// <summary>What is confirmed, and which figures can be read in two ways.</summary>
    /// <param name="fields">The declaration's fields.</param>
    /// <param name="map">The same as it stands in the file.</param>
    public static Writing Read(Fields fields, YamlMap map)
    {
        var marks = new List<Doubt>();
        Look(map, marks);
        return new Writing(fields.Choices(ConfirmedShape.Confirmed.Key, ConfirmedShape.Names), marks);
    }

    private static void Look(YamlValue value, List<Doubt> marks)
    {
        switch (value)
        {
            case YamlMap map:
                foreach (YamlEntry entry in map.Entries)
                {
                    if (entry.Value is YamlScalar scalar)
                    {
                        Look(entry.Key, scalar, marks);
                    }
                    else
                    {
                        Look(entry.Value, marks);
                    }
                }

                break;
            case YamlList list:
                foreach (YamlValue item in list.Items)
                {
                    Look(item, marks);
                }

                break;
        }
    }

    private static void Look(string key, YamlScalar scalar, List<Doubt> marks)
    {
        if (ConfirmedShape.Amounts.Contains(key) && ThousandsMark().IsMatch(scalar.Text.Trim()))
        {
            string text = scalar.Text.Trim();
            marks.Add(
                new Doubt(
                    key,
                    $"'{key}: {text}' is read as {text.TrimEnd('0').TrimEnd('.')}; with a thousands mark it would be {text.Replace(".", "", StringComparison.Ordinal)}.",
                    scalar.Place
                )
            );
        }
    }

    [GeneratedRegex("^[1-9][0-9]{0,2}[.][0-9]{3}$")]
    private static partial Regex ThousandsMark();
}
