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
            Density = DeclarationReader.ReadDensity(group, LiquidShape.Density),
            FlashPoint = DeclarationReader.ReadFlashPoint(group),
            Boiling = group.OptionalNumber(LiquidShape.Boiling) is { } boiling ? new Celsius(boiling) : null,
            SustainsCombustion = group.Has(LiquidShape.Combustion) ? group.Choice(LiquidShape.Combustion) == "positive" : null,
            Viscosity = group.OptionalNumber(LiquidShape.Viscosity) is { } viscosity ? new SquareMillimetresPerSecond(viscosity) : null,
            FormsFlammableVapour = group.OptionalFlag(LiquidShape.Vapour),
            Classes = ingredients.ReadClaims(group),
            Document = group.OptionalText(LiquidShape.Document),
        };
        bool isMeasured = facts.FlashPoint is not null || facts.SustainsCombustion is not null || facts.Classes is not null;
        if (isMeasured && facts.Document is null)
        {
            group.Lacks(LiquidShape.Document, "Name the report or sheet that the figures stand in: nobody can check them without it.");
        }

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
        if (fields.OptionalNumber(CandleShape.NetVolume) is not { } millilitres)
        {
            return (new Grams(fields.Number(CandleShape.Net)), null);
        }

        if (fields.Has(CandleShape.Net))
        {
            fields.Take(CandleShape.Net);
            fields.Problems.Add(
                fields.PlaceOf(CandleShape.NetVolume),
                "'netGrams' and 'netMillilitres' stand side by side.",
                "Keep the one that stands on the label: millilitres for a liquid."
            );
        }

        if (liquid?.Density is not { } density)
        {
            fields.Problems.Add(
                fields.PlaceOf(CandleShape.NetVolume),
                "The density of the liquid is not declared, so its mass is not known.",
                "Weigh 100 ml of it and write 'liquid: { densityGramsPerMl: 0.86 }'."
            );
            return (new Grams(millilitres), new Millilitres(millilitres));
        }

        return (density.MassOf(new Millilitres(millilitres)), new Millilitres(millilitres));
    }
}
