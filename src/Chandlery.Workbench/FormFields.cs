using Chandlery.Yaml;

namespace Chandlery.Workbench;

/// <summary>Where the form's fields stand in a declaration.</summary>
internal static class FormFields
{
    /// <summary>The field beside which a problem belongs; null when it stands in none.</summary>
    /// <param name="yaml">The text that has the problem.</param>
    /// <param name="place">Where it is.</param>
    /// <returns>A name of <see cref="CandleEdits"/>, <c>oil:</c> with the name of an oil, or <c>oils</c>.</returns>
    public static string? At(string yaml, TextPlace place)
    {
        if (YamlText.Read(yaml, place.File, new Problems()) is not { } declared)
        {
            return null;
        }

        foreach (YamlEntry entry in declared.Entries)
        {
            string? field = (entry.Key, entry.Value) switch
            {
                ("name", var value) => value.Place == place ? "name" : null,
                ("netGrams", var value) => value.Place == place ? "netGrams" : null,
                ("load", YamlMap load) => Within(load, place, ("percent", "loadPercent"), ("of", "loadOf")),
                ("wicks", YamlMap wicks) => Within(wicks, place, ("count", "wickCount")),
                ("oils", YamlList oils) => OilAt(oils, place),
                _ => null,
            };
            if (field is not null)
            {
                return field;
            }
        }

        return null;
    }

    private static string? Within(YamlMap map, TextPlace place, params (string Key, string Field)[] fields) =>
        map.Entries.Where(e => e.Value.Place == place).Join(fields, e => e.Key, f => f.Key, (_, f) => f.Field).FirstOrDefault();

    // The first item of a list may start where the list does: what is wrong there is told of the whole blend.
    private static string? OilAt(YamlList oils, TextPlace place)
    {
        if (oils.Place == place)
        {
            return "oils";
        }

        foreach (YamlMap oil in oils.Items.OfType<YamlMap>())
        {
            if (oil.Place == place || oil.Entries.Any(e => e.Value.Place == place))
            {
                return oil.Entries.FirstOrDefault(e => e.Key == "oil")?.Value is YamlScalar name ? $"oil:{name.Text}" : "oils";
            }
        }

        return null;
    }
}
