using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
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
            ({ IsKnown: false } open, { } told) => Settled(rule, open, told),
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

        List<(FlashRung? Rung, bool IsRelieved)> open =
        [
            .. (flash.IsLowerBound ? TurnsAbove(rule, flash.Temperature) : [flash.Temperature]).SelectMany(t => At(rule, t, liquid)),
        ];
        List<HazardCategory?> left = [.. open.Select(o => o.IsRelieved ? null : o.Rung?.Result).Distinct()];
        if (left.Count > 1)
        {
            string why = flash.IsLowerBound
                ? $"The flash point is known only to lie {figure}, which leaves more than one class open."
                : $"With a flash point of {figure} the initial boiling point decides, and none is declared.";
            return Unknown(rule, why) with { LeavesOpen = left };
        }

        if (flash.IsLowerBound)
        {
            return rule.Relief is { } test && open.Exists(o => o.IsRelieved)
                ? new FlashAnswer(
                    null,
                    $"The flash point lies {figure}, and the test {test.Test} was negative.",
                    test.Clause,
                    IsKnown: true
                )
                : new FlashAnswer(null, $"The flash point lies {figure}, beyond every category.", rule.Clause, IsKnown: true);
        }

        return open[0] switch
        {
            (null, _) => new FlashAnswer(null, $"The flash point is {figure}, beyond every category.", rule.Clause, IsKnown: true),
            ({ } rung, true) => new FlashAnswer(
                null,
                $"The flash point of {figure} would make it {rung.Result.Code}, but the test {rule.Relief!.Test} was negative.",
                rule.Relief.Clause,
                IsKnown: true
            ),
            ({ } rung, false) => new FlashAnswer(
                rung.Result,
                $"The flash point is {figure}{Boils(liquid)}; that is {rung.Result.Code}.",
                rule.Clause,
                IsKnown: true
            )
            {
                Measured = flash.Temperature,
            },
        };
    }

    // The rungs that one flash point may come to: several where the boiling point that decides is not declared, null for none of them.
    private static IEnumerable<(FlashRung? Rung, bool IsRelieved)> At(FlashRule rule, Celsius flash, LiquidFacts liquid)
    {
        foreach (FlashRung rung in rule.Rungs.Where(r => r.Takes(flash)))
        {
            if (rung.BoilingUpTo is { } highest && liquid.Boiling is { } boiling && boiling.Value > highest.Value)
            {
                continue;
            }

            yield return (
                rung,
                rule.Relief is { } relief
                    && relief.Result == rung.Result
                    && flash.Value > relief.FlashAbove.Value
                    && liquid.SustainsCombustion == false
            );
            if (rung.BoilingUpTo is null || liquid.Boiling is not null)
            {
                yield break;
            }
        }

        yield return (null, false);
    }

    // One flash point of each stretch above a lower bound on which the law says the same.
    private static IEnumerable<Celsius> TurnsAbove(FlashRule rule, Celsius bound)
    {
        double lowest = Math.BitIncrement(bound.Value);
        IEnumerable<Celsius> bounds = rule.Rungs.Select(r => r.Bound);
        return bounds
            .Concat(rule.Relief is { } relief ? [relief.FlashAbove] : [])
            .SelectMany(b => new[] { b.Value, Math.BitIncrement(b.Value) })
            .Where(t => t > lowest)
            .Prepend(lowest)
            .Select(t => new Celsius(t));
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

    // A document settles what the figures leave open, but it does not take the place of what they say: a class milder than they allow
    // is a contradiction that nobody here can solve.
    private static FlashAnswer Settled(FlashRule rule, FlashAnswer open, FlashAnswer told) =>
        open.LeavesOpen.Contains(told.Category) || open.LeavesOpen.All(o => Rank(rule, told.Category) <= Rank(rule, o))
            ? told
            : Unknown(
                rule,
                $"The document on the finished liquid says '{told.Category?.Code ?? IngredientShape.NotClassified}', which the figures measured of it rule out."
            );

    private static FlashAnswer Worse(FlashRule rule, FlashAnswer one, FlashAnswer other) =>
        Rank(rule, one.Category) <= Rank(rule, other.Category) ? one : other;

    // From the worst category on; none comes last.
    private static int Rank(FlashRule rule, HazardCategory? category) => rule.Results.TakeWhile(r => r != category).Count();

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
