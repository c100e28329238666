using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads how labels look: brands and the fronts that candles ask for.</summary>
internal static class BrandReader
{
    public static Brand ReadBrand(Fields fields, string id) =>
        new()
        {
            Id = id,
            Place = fields.Place,
            Design = fields.OptionalText(BrandShape.Design),
            Name = fields.OptionalText(BrandShape.Name),
            Monogram = ReadMonogram(fields),
            StrapLine = fields.OptionalText(BrandShape.StrapLine),
            Logo = ReadFile(fields, BrandShape.Logo),
            LogoPlace = fields.PlaceOf(BrandShape.Logo),
            Paper = ReadTint(fields, BrandShape.Paper),
            Deep = ReadTint(fields, BrandShape.Deep),
            Light = ReadTint(fields, BrandShape.Light),
            Accent = ReadTint(fields, BrandShape.Accent),
            Notes = ReadNotes(fields),
            NameFont = ReadFile(fields, BrandShape.NameFont),
            NameFontPlace = fields.PlaceOf(BrandShape.NameFont),
            ShowsShares = fields.OptionalFlag(BrandShape.ShowsShares) ?? false,
            OneInk = fields.OptionalFlag(BrandShape.OneInk) ?? false,
        };

    public static DesignRequest? ReadDesign(Fields fields, GroupField field)
    {
        if (fields.OptionalGroup(field) is not { } group)
        {
            return null;
        }

        var request = new DesignRequest(
            group.OptionalText(DesignShape.Name),
            group.PlaceOf(DesignShape.Name),
            !group.Has(DesignShape.Form)
                ? DesignForm.One
                : group.Choice(DesignShape.Form) switch
                {
                    "pair" => DesignForm.Pair,
                    "wrap" => DesignForm.Wrap,
                    _ => DesignForm.One,
                },
            group.OptionalText(DesignShape.StrapLine),
            group.OptionalNumber(DesignShape.BurnHours),
            group.OptionalText(DesignShape.ScentNotes)
        );
        group.Done();
        return request;
    }

    private static string? ReadMonogram(Fields fields)
    {
        string? text = fields.OptionalText(BrandShape.Monogram);
        if (text is not null && !Regex.IsMatch(text, BrandShape.Monogram.Pattern!, RegexOptions.CultureInvariant))
        {
            fields.Problems.Add(fields.PlaceOf(BrandShape.Monogram), $"'{text}' is no monogram.", "Write one to three letters.");
        }

        return text;
    }

    /// <summary>A name without folders: what a declaration needs lies beside it, and nothing else on the machine is read.</summary>
    internal static string? ReadFile(Fields fields, TextField field)
    {
        string? name = fields.OptionalText(field);
        if (
            name is not null
            && (
                name.Contains('/')
                || name.Contains('\\')
                || name.StartsWith('.')
                || !field.Endings.Contains(Path.GetExtension(name), StringComparer.OrdinalIgnoreCase)
            )
        )
        {
            fields.Problems.Add(
                fields.PlaceOf(field),
                $"'{field.Key}' must be the name of a file in the same folder that ends in {string.Join(" or ", field.Endings)}.",
                $"Put the file beside this one and write its name, such as {field.Example}."
            );
            return null;
        }

        return name;
    }

    private static Dictionary<Scent, Tint> ReadNotes(Fields fields)
    {
        var notes = new Dictionary<Scent, Tint>();
        foreach (YamlEntry entry in fields.Entries(BrandShape.Notes))
        {
            if (!Enum.TryParse(entry.Key, ignoreCase: true, out Scent scent) || !Enum.IsDefined(scent) || char.IsAsciiDigit(entry.Key[0]))
            {
                fields.Problems.Add(
                    entry.KeyPlace,
                    $"There is no note '{entry.Key}'.",
                    Suggestion.Nearest(entry.Key, ScentNames) is { } near
                        ? $"Did you mean '{near}'?"
                        : $"Notes: {string.Join(", ", ScentNames)}."
                );
            }
            else if (ReadTint(entry.Value, $"the colour of {entry.Key}", fields.Problems) is { } tint)
            {
                notes[scent] = tint;
            }
        }

        return notes;
    }

    /// <summary>The words for notes.</summary>
    public static string[] ScentNames { get; } = [.. Enum.GetNames<Scent>().Select(n => n.ToLowerInvariant())];

    private static Tint? ReadTint(Fields fields, EitherField field) =>
        fields.Take(field) is { } value ? ReadTint(value, $"'{field.Key}'", fields.Problems) : null;

    private static Tint? ReadTint(YamlValue value, string what, Problems problems)
    {
        switch (value)
        {
            case YamlScalar scalar when Regex.IsMatch(scalar.Text, TintShape.Hex, RegexOptions.CultureInvariant):
                return new Tint(scalar.Text, null, null);
            case YamlMap map:
                return ReadTint(new Fields(map, problems));
            default:
                problems.Add(
                    value.Place,
                    $"{what} must be a colour: six hexadecimal figures behind a #, in quotes.",
                    "Write such as '#14394A', or { screen: '#14394A', cmyk: 75 25 0 70 } when you know its inks."
                );
                return null;
        }
    }

    private static Tint ReadTint(Fields group)
    {
        string screen = group.Text(TintShape.Screen);
        if (!Regex.IsMatch(screen, TintShape.Hex, RegexOptions.CultureInvariant))
        {
            group.Problems.Add(group.PlaceOf(TintShape.Screen), $"'{screen}' is no colour.", "Write such as '#14394A', in quotes.");
        }

        string? spot = group.OptionalText(TintShape.Spot);
        if (spot is not null && !Regex.IsMatch(spot, TintShape.Spot.Pattern!, RegexOptions.CultureInvariant))
        {
            group.Problems.Add(group.PlaceOf(TintShape.Spot), $"'{spot}' is no name for an ink.", "Use letters, figures and blanks.");
            spot = null;
        }

        var tint = new Tint(screen, ReadInks(group), spot);
        group.Done();
        return tint;
    }

    private static List<double>? ReadInks(Fields group)
    {
        if (group.OptionalText(TintShape.Cmyk) is not { } text)
        {
            return null;
        }

        List<double> inks =
        [
            .. text.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(part => double.TryParse(part, CultureInfo.InvariantCulture, out double n) ? n : -1),
        ];
        if (inks.Count == 4 && inks.TrueForAll(i => i is >= 0 and <= 100))
        {
            return inks;
        }

        group.Problems.Add(
            group.PlaceOf(TintShape.Cmyk),
            $"'{text}' are no four inks.",
            "Write cyan, magenta, yellow and black in percent with blanks between them, such as '75 25 0 70'."
        );
        return null;
    }
}
