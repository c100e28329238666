using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads gift sets.</summary>
internal static class SetReader
{
    public static GiftSet Read(Fields fields, string id)
    {
        string name = fields.Text(SetShape.Name);
        var parts = new List<SetPart>();
        foreach (Fields part in fields.Groups(SetShape.Contains))
        {
            parts.Add(new SetPart(ReferenceReader.Read(part, SetShape.Product), (int)(part.OptionalNumber(SetShape.Count) ?? 1)));
            part.Done();
        }

        if (parts.Count == 0)
        {
            fields.Problems.Add(
                fields.PlaceOf(SetShape.Contains),
                "A set holds a product at least.",
                "Write 'contains:' and a line '- { product: fig-tin, count: 2 }' for each."
            );
        }

        return new GiftSet
        {
            Id = id,
            Place = fields.Place,
            Name = name,
            Parts = parts,
            IsSeenThrough = fields.OptionalFlag(SetShape.SeenThrough) ?? false,
            SoldIn = CandleReader.ReadCountries(fields),
        };
    }
}
