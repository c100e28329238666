using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads what was measured of a finished liquid.</summary>
internal static class LiquidReader
{
    public static LiquidFacts? Read(Fields fields, IngredientReader ingredients)
    {
        if (fields.OptionalGroup(LiquidShape.Liquid) is not { } group)
        {
            return null;
        }

        var facts = new LiquidFacts
        {
            Density = new GramsPerMillilitre(group.Number(LiquidShape.Density)),
            FlashPoint = MeasuredReader.ReadFlashPoint(group),
            Boiling = group.OptionalNumber(LiquidShape.Boiling) is { } boiling ? new Celsius(boiling) : null,
            SustainsCombustion = group.Has(LiquidShape.Combustion) ? group.Choice(LiquidShape.Combustion) == "positive" : null,
            Viscosity = group.OptionalNumber(LiquidShape.Viscosity) is { } viscosity ? new SquareMillimetresPerSecond(viscosity) : null,
            FormsFlammableVapour = group.OptionalFlag(LiquidShape.Vapour),
            Classes = ingredients.ReadClaims(group),
            Document = group.Text(LiquidShape.Document),
        };
        if (facts.FlashPoint is { Method: null })
        {
            group.Problems.Add(
                group.PlaceOf(LiquidShape.FlashPoint),
                "The flash point of a finished liquid needs its method.",
                "Write 'flashPoint: { celsius: 24, method: EN ISO 3679 }': flash points of other methods may not count."
            );
        }

        group.Done();
        return facts;
    }

    /// <summary>The nominal quantity: grams, or millilitres turned into grams by the liquid's density.</summary>
    public static (Grams Mass, Millilitres? Volume) ReadNet(Fields fields, LiquidFacts? liquid)
    {
        if (!fields.Has(CandleShape.NetVolume) && !fields.Has(CandleShape.Base))
        {
            return (new Grams(fields.Number(CandleShape.Net)), null);
        }

        if (fields.Has(CandleShape.Net))
        {
            fields.Take(CandleShape.Net);
            fields.Problems.Add(
                fields.PlaceOf(CandleShape.Net),
                "'netGrams' is the quantity of a solid, and 'base' or 'netMillilitres' say that this is a liquid.",
                "Write 'netMillilitres' and the density under 'liquid', or a 'wax'."
            );
        }

        var volume = new Millilitres(fields.Number(CandleShape.NetVolume));
        if (liquid is null && !fields.Has(LiquidShape.Liquid))
        {
            fields.Lacks(LiquidShape.Liquid, "Weigh 100 ml of it and write 'liquid: { densityGramsPerMl: 0.86, document: own weighing }'.");
        }

        return (liquid?.Density is { } density ? density.MassOf(volume) : new Grams(volume.Value), volume);
    }
}
