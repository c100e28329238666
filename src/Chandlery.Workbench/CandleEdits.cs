using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Yaml;

namespace Chandlery.Workbench;

/// <summary>What the page lets the maker change of a candle. Null fields stay as they are.</summary>
/// <param name="Name">Trade name.</param>
/// <param name="NetGrams">Net grams.</param>
/// <param name="LoadPercent">Load.</param>
/// <param name="LoadOf">wax or candle.</param>
/// <param name="Oils">The whole blend.</param>
/// <param name="WickCount">Number of wicks.</param>
public sealed partial record CandleEdits(
    string? Name = null,
    string? NetGrams = null,
    string? LoadPercent = null,
    string? LoadOf = null,
    IReadOnlyList<OilEdit>? Oils = null,
    string? WickCount = null
)
{
    private const int MostOils = 40;

    /// <summary>The declaration with the edits; what was not edited stays as it was written.</summary>
    /// <param name="yaml">The declaration's text.</param>
    /// <param name="oilsNow">The blend that the text declares.</param>
    /// <exception cref="FormatException">The text has no place for an edit.</exception>
    public string ApplyTo(string yaml, IReadOnlyList<OilEdit> oilsNow)
    {
        string named = Name is null ? yaml : YamlEdit.Set(yaml, ["name"], Name.Trim());
        string text = Set(Set(named, ["netGrams"], NetGrams), ["wicks", "count"], WickCount);
        text = Set(Set(text, ["load", "percent"], LoadPercent), ["load", "of"], LoadOf);
        return Oils is null ? text : WithOils(text, oilsNow, Oils);
    }

    private static string Set(string text, IReadOnlyList<object> path, string? value) =>
        value is null ? text : YamlEdit.Set(text, path, Plain(value));

    // A decimal comma is what many keyboards give. Before just three figures it may mark thousands as well: such a figure stays as
    // it was typed, and is refused where the file is read.
    private static string Plain(string value)
    {
        string trimmed = value.Trim();
        if (Thousands().IsMatch(trimmed))
        {
            return trimmed;
        }

        string point = trimmed.Replace(',', '.');
        return double.TryParse(point, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _) ? point : trimmed;
    }

    private static string WithOils(string text, IReadOnlyList<OilEdit> now, IReadOnlyList<OilEdit> wanted)
    {
        if (wanted.Count > MostOils)
        {
            throw new FormatException($"A blend of more than {MostOils} oils is not edited here.");
        }

        if (wanted.Any(o => o?.Oil is null || o.Amount is null || o.Measure is null))
        {
            throw new FormatException("An oil of the blend lacks its name, amount or measure.");
        }

        if (wanted.Select(o => o.Oil).Distinct().Count() < wanted.Count)
        {
            throw new FormatException("The same oil stands in the blend twice: add its amounts up.");
        }

        for (int i = now.Count - 1; i >= 0; i--)
        {
            OilEdit? keep = wanted.FirstOrDefault(w => w.Oil == now[i].Oil);
            if (keep is null)
            {
                // The last one can't go before another has come: an empty list has no line to stand on.
                continue;
            }

            if (keep.Measure != now[i].Measure)
            {
                text = YamlEdit.Rename(text, ["oils", i, now[i].Measure], Measure(keep.Measure));
            }

            if (Plain(keep.Amount) != now[i].Amount)
            {
                text = YamlEdit.Set(text, ["oils", i, keep.Measure], Plain(keep.Amount));
            }
        }

        foreach (OilEdit added in wanted.Where(w => now.All(n => n.Oil != w.Oil)))
        {
            text = YamlEdit.Add(
                text,
                ["oils"],
                $"{{ oil: {YamlEdit.Scalar(added.Oil)}, {Measure(added.Measure)}: {YamlEdit.Scalar(Plain(added.Amount))} }}"
            );
        }

        if (wanted.Count == 0)
        {
            throw new FormatException("A blend needs at least one oil.");
        }

        for (int i = now.Count - 1; i >= 0; i--)
        {
            text = wanted.Any(w => w.Oil == now[i].Oil) ? text : YamlEdit.Remove(text, ["oils", i]);
        }

        return text;
    }

    private static string Measure(string measure) =>
        measure is "share" or "grams" or "millilitres" or "drops"
            ? measure
            : throw new FormatException($"'{measure}' is no measure of an oil.");

    [GeneratedRegex(@"^[1-9][0-9]*,[0-9]{3}$")]
    private static partial Regex Thousands();
}
