using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Classified.Methods;

/// <summary>
/// The category of a flammable liquid from its measured flash point and boiling point, or from the class that a supplier or
/// laboratory gives the finished liquid. Of two that differ the worse one counts; what is not known stays not known.
/// </summary>
internal static class FlashMethod
{
    /// <summary>What the declared values come to.</summary>
    public static FlashAnswer Answer(FlashRule rule, LiquidFacts? liquid)
    {
        FlashAnswer? measured = liquid?.FlashPoint is { } flash ? Measured(rule, flash, liquid) : null;
        FlashAnswer? declared = liquid?.Classes is { } classes ? Declared(rule, classes) : null;
        return (measured, declared) switch
        {
            (null, null) => Unknown(
                rule,
                "Whether the liquid is flammable is not known: neither its flash point was measured nor does a supplier or laboratory give its class. It cannot be computed from the ingredients."
            ),
            (null, { } only) => only,
            ({ } only, null) => only,
            ({ IsKnown: false }, { } known) => known,
            ({ } one, { } other) => Worse(rule, one, other),
        };
    }

    /// <summary>The class; null for none, and where it is not known.</summary>
    public static ClassResult? Evaluate(FlashRule rule, LiquidFacts? liquid)
    {
        FlashAnswer answer = Answer(rule, liquid);
        return answer.Category is { } category
            ? new ClassResult(category, rule, () => new Explanation(category.Statement, Working(rule, answer, category), []))
            : null;
    }

    private static FlashAnswer Measured(FlashRule rule, FlashPoint flash, LiquidFacts liquid)
    {
        string figure = $"{(flash.IsLowerBound ? "above " : "")}{flash.Temperature} ({flash.Method})";
        if (flash.Method is not { } method || !rule.Methods.Any(m => method.Contains(m, StringComparison.OrdinalIgnoreCase)))
        {
            return new FlashAnswer(
                null,
                $"The flash point of {figure} does not count: the methods that do are {string.Join(", ", rule.Methods)}.",
                rule.MethodsClause,
                IsKnown: false
            );
        }

        if (flash.IsLowerBound)
        {
            return rule.Rungs.Any(r => r.Takes(new Celsius(Math.BitIncrement(flash.Temperature.Value))))
                ? Unknown(rule, $"The flash point is known only to lie {figure}, which leaves more than one class open.")
                : new FlashAnswer(null, $"The flash point lies {figure}, beyond every category.", rule.Clause, IsKnown: true);
        }

        foreach (FlashRung rung in rule.Rungs.Where(r => r.Takes(flash.Temperature)))
        {
            if (rung.BoilingUpTo is { } highest)
            {
                if (liquid.Boiling is not { } boiling)
                {
                    return Unknown(rule, $"With a flash point of {figure} the initial boiling point decides, and none is declared.");
                }

                if (boiling.Value > highest.Value)
                {
                    continue;
                }
            }

            return
                rule.Relief is { } relief
                && relief.Result == rung.Result
                && flash.Temperature.Value > relief.FlashAbove.Value
                && liquid.SustainsCombustion == false
                ? new FlashAnswer(
                    null,
                    $"The flash point of {figure} would make it {rung.Result.Code}, but the test {relief.Test} was negative.",
                    relief.Clause,
                    IsKnown: true
                )
                : new FlashAnswer(
                    rung.Result,
                    $"The flash point is {figure}{Boils(liquid)}; that is {rung.Result.Code}.",
                    rule.Clause,
                    IsKnown: true
                )
                {
                    Measured = flash.Temperature,
                };
        }

        return new FlashAnswer(null, $"The flash point is {figure}, beyond every category.", rule.Clause, IsKnown: true);
    }

    private static string Boils(LiquidFacts liquid) => liquid.Boiling is { } boiling ? $", and it boils from {boiling}" : "";

    private static FlashAnswer Declared(FlashRule rule, IReadOnlyList<HazardClaim> classes)
    {
        HazardCategory? worst = rule.Results.FirstOrDefault(r => classes.Any(c => c.Category == r));
        return new FlashAnswer(
            worst,
            worst is null
                ? "The document on the finished liquid gives it no class of flammable liquids."
                : $"The document on the finished liquid gives it {worst.Code}.",
            rule.Clause,
            IsKnown: true
        );
    }

    private static FlashAnswer Worse(FlashRule rule, FlashAnswer one, FlashAnswer other)
    {
        List<HazardCategory> order = [.. rule.Results];
        int Rank(FlashAnswer answer) => answer.Category is { } category ? order.IndexOf(category) : order.Count;
        return Rank(one) <= Rank(other) ? one : other;
    }

    private static FlashAnswer Unknown(FlashRule rule, string why) => new(null, why, rule.Clause, IsKnown: false);

    private static Working Working(FlashRule rule, FlashAnswer answer, HazardCategory category) =>
        new()
        {
            Formula = "flash point and initial boiling point of the finished liquid",
            Lines = [],
            Value = answer.Measured?.Value,
            Threshold = rule.Rungs.First(r => r.Result == category).Bound.Value,
            Unit = "°C",
            Clause = answer.Clause,
            Sentence = answer.Because,
            Confidence = rule.Confidence,
        };
}
