using Chandlery.Core.Assessed;
using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>What stands for the marks of a sentence.</summary>
internal static class SheetMarkValues
{
    /// <summary>The sentence with its marks filled in.</summary>
    public static string Fill(SheetSentence sentence, SheetContext context) =>
        MarkText.Fill(
            context.Texts.Sentence(sentence),
            name =>
                ValueOf(Enum.Parse<SheetMark>(name, ignoreCase: true), sentence, context)
                ?? throw new InvalidOperationException($"'{sentence.Key}' leaves {name} open, which this candle has not")
        );

    private static string? ValueOf(SheetMark mark, SheetSentence sentence, SheetContext context)
    {
        Assessment a = context.Assessment;
        TransportRules transport = context.Rules.Transport;
        return mark switch
        {
            SheetMark.Clause => sentence.Clause is { } clause ? context.Texts.Cited(clause) : null,
            SheetMark.Product => a.Candle.Name,
            SheetMark.Code => a.Id,
            SheetMark.Ufi => a.Ufi,
            SheetMark.UfiClause => context.Texts.Cited(a.Edition.Ufi.Clause),
            SheetMark.SupplierName => a.Maker.Name,
            SheetMark.SupplierAddress => string.Join(", ", a.Maker.AddressLines),
            SheetMark.SupplierTelephone => a.Maker.Telephone,
            SheetMark.SupplierEmail => a.Maker.Email,
            SheetMark.SupplierWeb => a.Maker.Web,
            SheetMark.EmergencyTelephone => a.Maker.EmergencyTelephone,
            SheetMark.Edition => context.Texts.Told(a.Edition.Name),
            SheetMark.AsOf => IsoDay.Plain(a.AsOf),
            SheetMark.LookedUp => IsoDay.Plain(a.Edition.LookedUp),
            SheetMark.Format => context.Texts.Told(context.Rules.Format),
            SheetMark.FormatClause => context.Texts.Cited(context.Rules.FormatClause),
            SheetMark.Undeclared => context.Figures.AtMost(a.Composition.UnknownHigh),
            SheetMark.ConcerningFrom => $"{context.Figures.Declared(context.Rules.Concerning.From.Value)} %",
            SheetMark.NamedFromClause => context.Texts.Cited(context.Rules.NamedFrom[0].Clause),
            SheetMark.NetMass => Grams(a.Candle.NetMass.Value, context.Figures),
            SheetMark.UnNumber => context.Transport.Entry.UnNumber,
            SheetMark.UnName => context.Transport.Entry.Name,
            SheetMark.UnClass => context.Transport.Entry.Class,
            SheetMark.PackingGroup => context.Transport.Entry.PackingGroup,
            SheetMark.TransportClause => context.Texts.Cited(transport.Clause),
            SheetMark.TransportClasses => string.Join(", ", context.Transport.Classes),
            SheetMark.TransportNames => string.Join(", ", context.Transport.Names),
            SheetMark.SmallUpTo => $"{context.Figures.Declared(transport.SmallUpTo.Value / 1000)} kg",
            SheetMark.NetVolume => a.Candle.NetVolume is { } volume
                ? $"{context.Figures.Declared(volume.Value)} ml"
                : Grams(a.Candle.NetMass.Value, context.Figures),
            SheetMark.SmallUpToLitres => Litres(transport.SmallLiquidUpTo, context.Figures),
            SheetMark.LimitedUpTo => context.Transport.Entry.LimitedUpTo is { } limited ? Litres(limited, context.Figures) : null,
            SheetMark.LimitedGross => $"{context.Figures.Declared(transport.LimitedGross.Value / 1000)} kg",
            SheetMark.LimitedClause => context.Texts.Cited(transport.LimitedClause),
            SheetMark.FlashPoint => a.Candle.Liquid?.FlashPoint is { } flash
                ? $"{(flash.IsLowerBound ? "> " : "")}{Degrees(flash.Temperature, context.Figures)}{(flash.Method is { } method ? $" ({method})" : "")}"
                : null,
            SheetMark.BoilingPoint => Degrees(a.Candle.Liquid?.Boiling, context.Figures),
            SheetMark.Viscosity => a.Candle.Liquid?.Viscosity is { } viscosity
                ? $"{context.Figures.Declared(viscosity.Value)} mm²/s"
                : null,
            SheetMark.LiquidDensity => Density(a.Candle.Liquid?.Density, context.Figures),
            SheetMark.SmallClause => context.Texts.Cited(transport.SmallClause),
            _ => Concerning(mark, context) ?? Property(mark, a.Composition.Recipe, context),
        };
    }

    private static string? Concerning(SheetMark mark, SheetContext context)
    {
        ConcerningRules rules = context.Rules.Concerning;
        return mark switch
        {
            SheetMark.Concerning => string.Join(
                "; ",
                context.Concerning(rules.All).Select(s => $"{WithShare(s, context)}: {string.Join(", ", CodesOf(s, rules.All))}")
            ),
            SheetMark.Persistent => Names(context.With(rules.Persistent), context),
            SheetMark.EndocrineForHealth => Names(context.Concerning(rules.EndocrineForHealth), context),
            SheetMark.EndocrineForEnvironment => Names(context.Concerning(rules.EndocrineForEnvironment), context),
            _ => null,
        };
    }

    private static string? Property(SheetMark mark, Recipe recipe, SheetContext context) =>
        mark switch
        {
            SheetMark.Dyes => string.Join(", ", WaxFigures.Dyes(recipe)),
            SheetMark.MeltingLow => Degrees(WaxFigures.Melting(recipe)?.Low, context.Figures),
            SheetMark.MeltingHigh => Degrees(WaxFigures.Melting(recipe)?.High, context.Figures),
            SheetMark.DensityLow => Density(WaxFigures.Density(recipe)?.Low, context.Figures),
            SheetMark.DensityHigh => Density(WaxFigures.Density(recipe)?.High, context.Figures),
            SheetMark.FlashPoints => string.Join(
                ", ",
                recipe
                    .Oils.Select(o => o.Oil)
                    .Select(o =>
                        o.FlashPoint is { } flash
                            ? $"{o.Name} {(flash.IsLowerBound ? "> " : "")}{Degrees(flash.Temperature, context.Figures)}"
                            : $"{o.Name} {context.Texts.Phrase(SheetPhrase.FlashPointNotDeclared)}"
                    )
            ),
            _ => throw new InvalidOperationException($"nothing stands for the mark {mark}"),
        };

    private static string Names(IEnumerable<Substance> substances, SheetContext context) =>
        string.Join(", ", substances.Select(s => WithShare(s, context)));

    private static string WithShare(Substance s, SheetContext context) =>
        context.Texts.Phrase(SheetPhrase.SubstanceUpTo, ("name", s.Name), ("share", context.Figures.AtMost(s.Ingredient.WholeHigh)));

    private static IEnumerable<string> CodesOf(Substance s, IEnumerable<HazardCategory> hazards) =>
        s.Hazards.Where(h => hazards.Contains(h.Category)).Select(h => h.Category.Code);

    private static string Litres(Millilitres volume, FigureFormat figures) => $"{figures.Declared(volume.Value / 1000)} l";

    private static string Grams(double grams, FigureFormat figures) => $"{figures.Declared(grams)} g";

    private static string? Degrees(Celsius? temperature, FigureFormat figures) =>
        temperature is { } t ? $"{figures.Declared(t.Value)} °C" : null;

    private static string? Density(GramsPerMillilitre? density, FigureFormat figures) =>
        density is { } d ? $"{figures.Declared(d.Value)} g/ml" : null;
}
