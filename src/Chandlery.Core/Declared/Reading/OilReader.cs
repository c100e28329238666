using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads oils.</summary>
/// <param name="ingredients">Reads tables of ingredients.</param>
internal sealed class OilReader(IngredientReader ingredients)
{
    /// <summary>An oil.</summary>
    public Oil Read(Fields fields, string id) =>
        new Oil
        {
            Id = id,
            Place = fields.Place,
            Name = fields.Text(OilShape.Name),
            Supplier = fields.Text(OilShape.Supplier),
            Document = fields.Text(OilShape.Document),
            Revised = fields.Day(OilShape.Revised),
            Ingredients = ingredients.ReadTable(fields, required: true),
            OwnClaims = ingredients.ReadClaims(fields),
            FlashPoint = MeasuredReader.ReadFlashPoint(fields),
            Density = MeasuredReader.ReadDensity(fields, OilShape.Density),
            DropMass = fields.OptionalNumber(OilShape.DropMass) is { } milligrams ? new Grams(milligrams / 1000) : null,
            HighestLoad = LoadReader.Read(fields, OilShape.HighestLoad),
            Ifra = ReadIfra(fields),
            NotDeclared = fields.Texts(OilShape.NotDeclared),
            Source = NotifiedShape.ReadSource(fields),
            Draft = ReadDraft(fields),
            Note = ReadNote(fields),
        };

    private static Scent? ReadNote(Fields fields) =>
        fields.Has(OilShape.Note) ? Enum.Parse<Scent>(fields.Choice(OilShape.Note), ignoreCase: true) : null;

    private static DraftOrigin? ReadDraft(Fields fields)
    {
        if (fields.OptionalGroup(OilShape.Draft) is not { } draft)
        {
            return null;
        }

        var files = new List<string>();
        foreach (Fields source in draft.Groups(OilShape.From))
        {
            files.Add(source.Text(OilShape.DraftFile));
            source.Text(OilShape.DraftHash);
            source.Done();
        }

        TextPlace place = draft.PlaceOf(OilShape.Reviewed);
        Review? review = draft.Take(OilShape.Reviewed) switch
        {
            YamlScalar { Text: "no" } or null => null,
            YamlMap map => ReadReview(new Fields(map, fields.Problems)),
            { } other => Refuse(other),
        };
        draft.Done();
        return new DraftOrigin(files, review, place);

        Review? Refuse(YamlValue value)
        {
            fields.Problems.Add(
                value.Place,
                "'reviewed' must name who compared the draft with the document, and when.",
                "Write 'reviewed: { by: your name, on: 2026-11-25 }', or 'reviewed: no'."
            );
            return null;
        }
    }

    private static Review ReadReview(Fields fields)
    {
        var review = new Review(fields.Text(OilShape.By), fields.Day(OilShape.On));
        fields.Done();
        return review;
    }

    private static IfraCertificate? ReadIfra(Fields fields)
    {
        Fields? group = fields.OptionalGroup(OilShape.Ifra);
        if (group is null)
        {
            return null;
        }

        var amendment = (int)group.Number(OilShape.Amendment);
        DateOnly date = group.Day(OilShape.Date);
        var limits = new Dictionary<string, IfraLimit>();
        foreach (YamlEntry entry in group.Entries(OilShape.Limits))
        {
            limits[entry.Key.ToUpperInvariant()] = (entry.Value as YamlScalar)?.Text switch
            {
                OilShape.NotRestricted => new IfraLimit(MassPercent.Whole),
                OilShape.NotPermitted => new IfraLimit(MassPercent.Zero),
                _ => new IfraLimit(new MassPercent(group.ReadNumber(entry.Value, $"the limit of category {entry.Key}", OilShape.Limit))),
            };
        }

        group.Done();
        return new IfraCertificate(amendment, date, limits);
    }
}
