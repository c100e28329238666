using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Yaml;

/// <summary>
/// Takes the fields of a map one by one and notes everything that is wrong with them. A required field that is missing
/// or wrong is noted and a harmless stand-in is returned, so that reading goes on and all problems are shown at once;
/// whoever reads must drop the result when there are problems.
/// </summary>
public sealed partial class Fields(YamlMap map, Problems problems)
{
    private readonly List<string> asked = [];
    private readonly bool[] taken = new bool[map.Entries.Count];

    /// <summary>Start of the map.</summary>
    public TextPlace Place => map.Place;

    /// <summary>Place of the first field, for what is wrong with the map as a whole.</summary>
    public TextPlace FirstPlace => map.Entries.Count > 0 ? map.Entries[0].KeyPlace : map.Place;

    /// <summary>Where problems go.</summary>
    public Problems Problems => problems;

    /// <summary>True when the field is there.</summary>
    public bool Has(string key) => IndexOf(key) >= 0;

    /// <summary>The raw value, or null; the field then counts as known.</summary>
    public YamlValue? Take(string key)
    {
        asked.Add(key);
        int at = IndexOf(key);
        if (at < 0)
        {
            return null;
        }

        taken[at] = true;
        return map.Entries[at].Value;
    }

    /// <summary>Where the field stands; the map's start when it is missing.</summary>
    public TextPlace PlaceOf(string key) => IndexOf(key) is var at and >= 0 ? map.Entries[at].Value.Place : map.Place;

    // Every file of a catalogue is asked for every field of its kind.
    private int IndexOf(string key)
    {
        IReadOnlyList<YamlEntry> entries = map.Entries;
        for (int i = 0; i < entries.Count; i++)
        {
            if (entries[i].Key == key)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>A text that must be there.</summary>
    public string Text(string key, string example) => OptionalText(key) ?? Missing(key, example, "");

    /// <summary>A text that may be missing.</summary>
    public string? OptionalText(string key)
    {
        switch (Take(key))
        {
            case null:
                return null;
            case YamlScalar scalar when !string.IsNullOrWhiteSpace(scalar.Text):
                return scalar.Text.Trim();
            case { } other:
                problems.Add(other.Place, $"'{key}' must be a text.");
                return "?";
        }
    }

    /// <summary>A number that must be there.</summary>
    public double Number(string key, double above, double atMost, string example) =>
        Number(new NumberField(key, "", example, above, atMost));

    /// <summary>A number that must be there.</summary>
    public double Number(NumberField field) => OptionalNumber(field) ?? Missing(field.Key, field.Example, StandIn(field));

    /// <summary>A number that may be missing: above one bound and at most another.</summary>
    public double? OptionalNumber(string key, double above, double atMost) => OptionalNumber(new NumberField(key, "", "", above, atMost));

    /// <summary>A number that may be missing.</summary>
    public double? OptionalNumber(NumberField field)
    {
        YamlValue? value = Take(field.Key);
        return value is null ? null : ReadNumber(value, $"'{field.Key}'", field);
    }

    /// <summary>A day that must be there.</summary>
    public DateOnly Day(string key)
    {
        string text = Text(key, "2026-11-25");
        Parsed<DateOnly> day = IsoDay.Parse(text);
        if (day.Success)
        {
            return day.Value;
        }

        if (Has(key))
        {
            problems.Add(PlaceOf(key), day.Reason, "Write year-month-day, such as 2026-11-25.");
        }

        return DateOnly.MinValue;
    }

    /// <summary>A day that may be missing.</summary>
    public DateOnly? OptionalDay(string key) => Has(key) ? Day(key) : null;

    /// <summary>Yes or no.</summary>
    public bool? OptionalFlag(string key)
    {
        YamlValue? value = Take(key);
        if (value is null)
        {
            return null;
        }

        switch ((value as YamlScalar)?.Text)
        {
            case "true" or "yes":
                return true;
            case "false" or "no":
                return false;
            default:
                problems.Add(value.Place, $"'{key}' must be yes or no.");
                return false;
        }
    }

    /// <summary>One word of a fixed set.</summary>
    public string Choice(string key, params string[] allowed)
    {
        string? text = OptionalText(key);
        if (text is null)
        {
            return Missing(key, string.Join(" or ", allowed), allowed.FirstOrDefault("?"));
        }

        if (allowed.Contains(text))
        {
            return text;
        }

        problems.Add(PlaceOf(key), $"'{key}: {text}' is not known.", $"Write one of: {string.Join(", ", allowed)}.");
        return allowed.FirstOrDefault("?");
    }

    /// <summary>Some values of an enumeration, by their names; empty when missing.</summary>
    public IReadOnlyList<T> Enumerations<T>(string key)
        where T : struct, Enum => [.. Choices(key, EnumName.All<T>()).Select(c => Enum.Parse<T>(c, ignoreCase: true))];

    /// <summary>Some words of a fixed set; empty when missing.</summary>
    public IReadOnlyList<string> Choices(string key, params string[] allowed)
    {
        foreach (YamlValue item in List(key))
        {
            if (item is not YamlScalar scalar || !allowed.Contains(scalar.Text))
            {
                problems.Add(
                    item.Place,
                    $"'{(item as YamlScalar)?.Text}' is not known in '{key}'.",
                    $"Write some of: {string.Join(", ", allowed)}."
                );
            }
        }

        return [.. Texts(key).Where(allowed.Contains)];
    }

    /// <summary>One of the names of an enumeration, written in lower camel case.</summary>
    /// <param name="key">The field.</param>
    /// <param name="standIn">What is returned when the field is wrong.</param>
    public T Enumeration<T>(string key, T standIn)
        where T : struct, Enum
    {
        string[] allowed = [.. EnumName.All<T>().Where(n => n != "none")];
        string text = Choice(key, allowed);
        return Enum.TryParse(text, ignoreCase: true, out T value) ? value : standIn;
    }

    /// <summary>Yes or no, which must be there.</summary>
    public bool Flag(string key) => OptionalFlag(key) ?? Missing(key, "yes", false);

    /// <summary>A number that must be there, from one bound to another, both included.</summary>
    public double NumberFrom(string key, double from, double atMost, string example) =>
        Number(new NumberField(key, "", example, from, atMost) { LowAllowed = true });

    /// <summary>A group of fields that may be missing.</summary>
    public Fields? OptionalGroup(string key)
    {
        switch (Take(key))
        {
            case null:
                return null;
            case YamlMap group:
                return new Fields(group, problems);
            case { } other:
                problems.Add(other.Place, $"'{key}' must be a group of fields.");
                return null;
        }
    }

    /// <summary>
    /// A group of fields that must be there. When it is not, that alone is noted: the group returned is empty and keeps to itself
    /// what is missing in it.
    /// </summary>
    public Fields Group(string key, string example) => OptionalGroup(key) ?? Silent(key, SuchAs(key, example));

    private Fields Silent(string key, string remedy)
    {
        if (!Has(key))
        {
            Lacks(key, remedy);
        }

        return new Fields(new YamlMap([], map.Place), new Problems());
    }

    /// <summary>A list; empty when missing.</summary>
    public IReadOnlyList<YamlValue> List(string key)
    {
        switch (Take(key))
        {
            case null:
                return [];
            case YamlList list:
                return list.Items;
            case { } other:
                problems.Add(other.Place, $"'{key}' must be a list.", "Start each item with '- '.");
                return [];
        }
    }

    /// <summary>A list of groups; empty when missing.</summary>
    public IReadOnlyList<Fields> Groups(string key)
    {
        var groups = new List<Fields>();
        foreach (YamlValue item in List(key))
        {
            if (item is YamlMap group)
            {
                groups.Add(new Fields(group, problems));
            }
            else
            {
                problems.Add(item.Place, $"Each item of '{key}' must be a group of fields.");
            }
        }

        return groups;
    }

    /// <summary>A list of texts; empty when missing.</summary>
    public IReadOnlyList<string> Texts(string key)
    {
        var texts = new List<string>();
        foreach (YamlValue item in List(key))
        {
            if (item is YamlScalar { Text.Length: > 0 } scalar)
            {
                texts.Add(scalar.Text.Trim());
            }
            else
            {
                problems.Add(item.Place, $"Each item of '{key}' must be a text.");
            }
        }

        return texts;
    }

    /// <summary>A map of free names to texts; empty when missing. What is no text is noted and left out; quotes say that none is meant.</summary>
    public Dictionary<string, string> NamedTexts(string key) => NamedTexts(key, Entries(key));

    /// <summary>The same of entries that were asked for already, so that a map that is none is noted once.</summary>
    public Dictionary<string, string> NamedTexts(string key, IReadOnlyList<YamlEntry> entries)
    {
        var texts = new Dictionary<string, string>();
        foreach (YamlEntry entry in entries)
        {
            if (entry.Value is YamlScalar scalar && (scalar.Quoted || scalar.Text.Length > 0))
            {
                texts[entry.Key] = scalar.Text;
            }
            else
            {
                problems.Add(entry.Value.Place, $"'{entry.Key}' in '{key}' must be a text.");
            }
        }

        return texts;
    }

    /// <summary>The entries of a map of free names, such as limits per category.</summary>
    public IReadOnlyList<YamlEntry> Entries(string key)
    {
        switch (Take(key))
        {
            case null:
                return [];
            case YamlMap group:
                return group.Entries;
            case { } other:
                problems.Add(other.Place, $"'{key}' must be a group of fields.");
                return [];
        }
    }

    /// <summary>True when the field is there.</summary>
    public bool Has(Field field) => Has(field.Key);

    /// <summary>The raw value, or null; the field then counts as known.</summary>
    public YamlValue? Take(Field field) => Take(field.Key);

    /// <summary>Where the field stands; the map's start when it is missing.</summary>
    public TextPlace PlaceOf(Field field) => PlaceOf(field.Key);

    /// <summary>A text that must be there.</summary>
    public string Text(TextField field) => Text(field.Key, field.Example);

    /// <summary>A text that may be missing.</summary>
    public string? OptionalText(TextField field) => OptionalText(field.Key);

    /// <summary>A day that must be there.</summary>
    public DateOnly Day(DayField field) => Day(field.Key);

    /// <summary>A day that may be missing.</summary>
    public DateOnly? OptionalDay(DayField field) => OptionalDay(field.Key);

    /// <summary>Yes or no.</summary>
    public bool? OptionalFlag(FlagField field) => OptionalFlag(field.Key);

    /// <summary>One word of a fixed set.</summary>
    public string Choice(ChoiceField field) => Choice(field.Key, [.. field.Choices]);

    /// <summary>A group of fields that may be missing.</summary>
    public Fields? OptionalGroup(GroupField field) => OptionalGroup(field.Key);

    /// <summary>A group of fields that must be there, as <see cref="Group(string, string)"/>, with what to write instead.</summary>
    public Fields Group(GroupField field, string remedy) => OptionalGroup(field) ?? Silent(field.Key, remedy);

    /// <summary>Notes that a field is missing, with what to write instead; whether it must be there is the reader's to know.</summary>
    public void Lacks(Field field, string remedy) => Lacks(field.Key, remedy);

    /// <summary>A list of groups; empty when missing.</summary>
    public IReadOnlyList<Fields> Groups(GroupsField field) => Groups(field.Key);

    /// <summary>A list of texts; empty when missing.</summary>
    public IReadOnlyList<string> Texts(TextsField field) => Texts(field.Key);

    /// <summary>The entries of a map of free names.</summary>
    public IReadOnlyList<YamlEntry> Entries(MapField field) => Entries(field.Key);

    /// <summary>Call last: notes every field that nobody asked for.</summary>
    public void Done()
    {
        for (int i = 0; i < taken.Length; i++)
        {
            if (taken[i])
            {
                continue;
            }

            YamlEntry entry = map.Entries[i];
            List<string> known = [.. asked.Distinct()];
            string remedy =
                entry.Key.All(char.IsAsciiDigit) && entry.Value is YamlScalar { Text: "" }
                    ? "In braces a comma ends a value: write decimals with a point, such as 7.5."
                : Suggestion.Nearest(entry.Key, known) is { } near ? $"Did you mean '{near}'?"
                : $"Known here: {string.Join(", ", known)}.";
            problems.Add(entry.KeyPlace, $"'{entry.Key}' is not a field that is known here.", remedy);
        }
    }

    /// <summary>Reads a number from a value; notes what is wrong and returns a stand-in when it cannot.</summary>
    public double ReadNumber(YamlValue value, string what, NumberField field)
    {
        if (value is not YamlScalar scalar || !DecimalNumber().IsMatch(scalar.Text))
        {
            string written = (value as YamlScalar)?.Text ?? "a group";
            string remedy = written.Contains(',', StringComparison.Ordinal)
                ? "Use a decimal point and no thousands mark, such as 12.5."
                : "Write digits with an optional decimal point, such as 12.5, and leave the unit out.";
            problems.Add(value.Place, $"{what} must be a number, not '{written}'.", remedy);
            return StandIn(field);
        }

        double number = double.Parse(scalar.Text, NumberStyles.Float, CultureInfo.InvariantCulture);
        if (field.Allows(number))
        {
            return number;
        }

        problems.Add(value.Place, $"{what} is {scalar.Text}: it must be {field.Bounds}.");
        return StandIn(field);
    }

    private static double StandIn(NumberField field) => field.Allows(1) ? 1 : field.High;

    private T Missing<T>(string key, string example, T standIn)
    {
        Lacks(key, SuchAs(key, example));
        return standIn;
    }

    private void Lacks(string key, string remedy) => problems.Add(map.Place, $"'{key}' is missing.", remedy);

    private static string SuchAs(string key, string example) => $"Add it, such as '{key}: {example}'.";

    [GeneratedRegex(@"^-?[0-9]{1,12}(\.[0-9]{1,17})?$", RegexOptions.CultureInvariant)]
    private static partial Regex DecimalNumber();
}
