using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads waxes and the bases of liquids.</summary>
/// <param name="ingredients">Reads tables of ingredients.</param>
internal sealed class WaxReader(IngredientReader ingredients)
{
    /// <summary>A wax.</summary>
    public Wax Read(Fields fields, string id)
    {
        string name = fields.Text(WaxShape.Name);
        string supplier = fields.Text(WaxShape.Supplier);
        List<WaxPart> blend = [];
        foreach (Fields part in fields.Groups(WaxShape.Blend))
        {
            blend.Add(new WaxPart(ReferenceReader.Read(part, WaxShape.Part), new MassPercent(part.Number(WaxShape.Percent))));
            part.Done();
        }

        double total = blend.Sum(p => p.Share.Value);
        if (blend.Count > 0 && Math.Abs(total - 100) > 1e-6)
        {
            fields.Problems.Add(fields.PlaceOf(WaxShape.Blend), $"The parts of the blend add up to {Figures.Plain(total)} %, not 100 %.");
        }

        if (blend.Count > 0 && fields.Has(IngredientShape.Table))
        {
            fields.Problems.Add(
                fields.PlaceOf(IngredientShape.Table),
                "A wax is either a blend of other waxes or has ingredients of its own.",
                "Keep one of the two."
            );
        }

        return new Wax
        {
            Id = id,
            Place = fields.Place,
            Name = name,
            Supplier = supplier,
            Ingredients = ingredients.ReadTable(fields, required: blend.Count == 0),
            Blend = blend,
            HighestLoad = LoadReader.Read(fields, WaxShape.HighestLoad),
            SolidDensity = MeasuredReader.ReadDensity(fields, WaxShape.SolidDensity),
            LiquidDensity = MeasuredReader.ReadDensity(fields, WaxShape.LiquidDensity),
            MeltingPoint = fields.OptionalNumber(WaxShape.Melting) is { } melting ? new Celsius(melting) : null,
            Source = NotifiedShape.ReadSource(fields),
        };
    }

    /// <summary>The base of a liquid.</summary>
    public Wax ReadBase(Fields fields, string id) =>
        new Wax
        {
            Id = id,
            Place = fields.Place,
            Name = fields.Text(WaxShape.Name),
            Supplier = fields.Text(WaxShape.Supplier),
            Ingredients = ingredients.ReadTable(fields, required: true),
            Blend = [],
            HighestLoad = LoadReader.Read(fields, BaseShape.HighestLoad),
            SolidDensity = null,
            LiquidDensity = MeasuredReader.ReadDensity(fields, BaseShape.Density),
            IsBase = true,
            Source = NotifiedShape.ReadSource(fields),
        };
}
