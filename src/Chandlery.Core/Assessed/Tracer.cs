using System.Text;
using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Limits;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Assessed;

/// <summary>
/// Explains one result twice: in a few sentences for a reader who is no chemist, then with inputs, formula, threshold
/// and clause for an inspector.
/// </summary>
public static class Tracer
{
    /// <summary>What can be asked about this candle.</summary>
    public static IReadOnlyList<string> Askable(Assessment a) =>
        [
            "load",
            .. a.Classification.Classes.Select(c => c.Category.Code),
            .. a.Label.All.Select(c => c.Text),
            .. a.Limits.Select(l => l.Name),
            .. a.Substances.Select(s => s.Name),
        ];

    /// <summary>The explanation, or null when the question fits nothing.</summary>
    /// <param name="a">The assessment.</param>
    /// <param name="asked">A class, statement, pictogram, signal word, limit, substance name, CAS number or "load".</param>
    public static string? Explain(Assessment a, string asked)
    {
        var text = new StringBuilder();
        bool found =
            Load(a, asked, text)
            | Classes(a, asked, text)
            | Sensitisers(a, asked, text)
            | NotReached(a, asked, text)
            | Choices(a, asked, text)
            | Limits(a, asked, text)
            | Substances(a, asked, text);
        return found ? a.Kind.Say(text.ToString()).TrimEnd() + "\n" : null;
    }

    private static bool Same(string written, string asked) => string.Equals(written, asked.Trim(), StringComparison.OrdinalIgnoreCase);

    private static bool Load(Assessment a, string asked, StringBuilder text)
    {
        if (!Same("load", asked))
        {
            return false;
        }

        Recipe r = a.Composition.Recipe;
        if (a.Kind.State == PhysicalState.Liquid)
        {
            text.AppendLine($"The finished liquid holds {r.Load} of oil.");
        }
        else
        {
            LoadOfMelt(r, text);
        }

        text.AppendLine();
        foreach (OilShare oil in r.Oils)
        {
            text.AppendLine($"  {oil.Oil.Name}: {oil.ShareOfBlend} of the blend, {oil.Share} of the finished candle");
        }

        return true;
    }

    private static void LoadOfMelt(Recipe r, StringBuilder text)
    {
        text.AppendLine(
            $"The scented melt holds {r.MeltLoadOfWax} of oil, reckoned on its wax, which is {r.MeltLoadOfCandle} of the melt."
        );
        text.AppendLine(
            r.TopUp.Value > 0
                ? $"The unscented second pour is {r.TopUp} of the finished candle, so the candle as a whole holds {r.Load} of oil."
                : "Nothing dilutes it afterwards, so the candle as a whole holds the same."
        );
    }

    private static bool Classes(Assessment a, string asked, StringBuilder text)
    {
        bool found = false;
        foreach (ClassResult c in a.Classification.Classes)
        {
            if (Names(c.Category, asked) || Same(c.Statement, asked))
            {
                text.AppendLine($"{c.Category.Code} ({c.Statement}), {c.Category.Group}").AppendLine();
                text.AppendLine($"{c.Category.Plain} {c.Working.Sentence} {OnTheLabel(a, c)} {HowFar(a, c)}".TrimEnd());
                Write(text, c.Working, c.Rule.Stricter);
                WriteDay(text, a, c.Rule);
                found = true;
            }
        }

        return found;
    }

    private static string OnTheLabel(Assessment a, ClassResult c)
    {
        LabelElement? element = a.Edition.ElementsOf(c.Category).FirstOrDefault();
        if (!a.Edition.Label.ShowsHazards)
        {
            return "A consumer candle's label does not show it; the shop and the safety data sheet do.";
        }

        string picture = element?.Pictogram is { } code && a.Label.Pictograms.Any(p => p.Code == code) ? $", the pictogram {code}" : "";
        string word = element?.SignalWord is { } signal && a.Label.SignalWord?.Code == signal ? $", the signal word {signal}" : "";
        return $"That puts the statement {c.Statement}{picture}{word} on the label.";
    }

    // Estimates of toxicity fall as the candle gets worse; shares rise. Less of something does not move a flash point by rule.
    private static string HowFar(Assessment a, ClassResult c) =>
        a.Verdict.WhyNoShareDecides(c.Rule) is not null || c.Working is not { Value: { } value, Threshold: var threshold, Unit: var unit }
            ? ""
        : unit == "%" ? $"Less than {Figures.Plain(100 * threshold / value)} % of the present amount would not reach it."
        : $"Less than {Figures.Plain(100 * value / threshold)} % of the present amounts would not reach it.";

    private static bool Sensitisers(Assessment a, string asked, StringBuilder text)
    {
        if (
            a.Classification.Supplemental is not { } statement
            || !a.Label.Supplemental.Any(s => s.Code == statement)
            || !Same(statement, asked)
        )
        {
            return false;
        }

        text.AppendLine($"{statement}, sensitisers that must be named").AppendLine();
        text.AppendLine(
            "The candle is not classified as sensitising. Someone who is already allergic can react to less, so these are named:"
        );
        foreach (Sensitiser sensitiser in a.Classification.Sensitisers)
        {
            text.AppendLine().AppendLine(sensitiser.Working.Sentence);
            Write(text, sensitiser.Working, "");
        }

        return true;
    }

    private static bool NotReached(Assessment a, string asked, StringBuilder text)
    {
        bool found = false;
        foreach (ClassRule rule in a.Edition.RulesFor(a.Kind.State).Where(r => r.Results.Any(c => Names(c, asked))))
        {
            ClassResult? result = a.Verdict.ResultOf(rule);
            if (result is not null && Names(result.Category, asked))
            {
                continue;
            }

            found = true;
            if (!a.Verdict.Law.Rules.Contains(rule))
            {
                text.AppendLine($"{rule.Group}: this rule does not bind the candle on {IsoDay.Plain(a.AsOf)}.").AppendLine();
            }
            else
            {
                string outcome =
                    result is not null ? $"the candle is {result.Category.Code} instead."
                    : rule is FlashRule && a.Verdict.FlammabilityUnknown is not null ? ""
                    : "no class is reached.";
                string[] said = [outcome, a.Verdict.WhyNoShareDecides(rule) ?? ""];
                text.AppendLine($"{rule.Group}: {string.Join(' ', said.Where(s => s.Length > 0))}").AppendLine();
                IReadOnlyList<StepFilling> fillings = a.Verdict.FillingOf(rule);
                foreach (StepFilling step in fillings)
                {
                    text.AppendLine($"  {step.Result.Code}: {Figures.Plain(step.Filling * 100)} % of the way to its limit of {step.Limit}");
                }

                if (fillings.Count > 0)
                {
                    text.AppendLine();
                }
            }

            text.AppendLine($"  clause:    {rule.Clause}");
            WriteDay(text, a, rule);
        }

        return found;
    }

    private static bool Names(HazardCategory category, string asked) =>
        Same(category.Code, asked) || Same(category.ClassCode, asked) || Same(category.Statement, asked);

    private static void WriteDay(StringBuilder text, Assessment a, ClassRule rule)
    {
        if (rule.InForce.BindsFrom(a.Candle.OnMarketSince) is not { } from)
        {
            return;
        }

        string stock = a.Candle.OnMarketSince is { } since ? $" (on the market since {IsoDay.Plain(since)})" : "";
        text.AppendLine($"  binds:     from {IsoDay.Plain(from)} on for this candle{stock}");
    }

    private static bool Choices(Assessment a, string asked, StringBuilder text)
    {
        bool found = false;
        IEnumerable<LabelChoice> chosen = a.Label.All.Except(a.Label.Hazard).Except(a.Label.Supplemental.Where(s => IsOfClass(a, s)));
        foreach (LabelChoice choice in chosen.Where(c => Same(c.Text, asked)))
        {
            text.AppendLine($"{choice.Text} is on the label: {choice.Because}.").AppendLine($"  clause: {choice.Clause}");
            found = true;
        }

        foreach (LeftOffChoice choice in a.Label.LeftOff.Where(c => Same(c.Code, asked)))
        {
            text.AppendLine($"{choice.Code} is not on the label: {choice.Because}.").AppendLine($"  clause: {choice.Clause}");
            found = true;
        }

        return found;
    }

    // Such a statement is explained with its class, or with the sensitisers that it names.
    private static bool IsOfClass(Assessment a, StatementChoice statement) =>
        statement.NamesSubstances || a.Classification.Classes.Any(c => c.Statement == statement.Code);

    private static bool Limits(Assessment a, string asked, StringBuilder text)
    {
        List<LimitCheck> checks =
        [
            .. a.Limits.Where(l => asked.Trim().Length >= 3 && l.Name.Contains(asked.Trim(), StringComparison.OrdinalIgnoreCase)),
        ];
        foreach (LimitCheck limit in checks)
        {
            text.AppendLine(limit.Name);
            text.AppendLine(
                limit.Holds is null
                    ? $"  not checked: {limit.Explanation}"
                    : $"  {Figures.Plain(limit.Value!.Value)} {limit.Unit} against at most {Figures.Plain(limit.Limit!.Value)}: {(limit.Holds == true ? "holds" : "BROKEN")}, margin {Figures.Plain(limit.Margin!.Value)}"
            );
            text.AppendLine($"  {limit.Explanation}").AppendLine($"  source: {limit.Source}").AppendLine();
        }

        return checks.Count > 0;
    }

    private static bool Substances(Assessment a, string asked, StringBuilder text)
    {
        bool found = false;
        foreach (Substance s in a.Substances)
        {
            if (!Same(s.Name, asked) && !Same(s.Ingredient.Identity.Name, asked) && !Same(s.Ingredient.Identity.Cas?.Text ?? "", asked))
            {
                continue;
            }

            found = true;
            text.AppendLine($"{s.Ingredient.Identity.Name}, CAS {s.Ingredient.Identity.Cas?.Text ?? "not given"}");
            text.AppendLine($"The finished candle holds between {s.Ingredient.Low} and {s.Ingredient.High} of it.");
            foreach (Contribution part in s.Ingredient.Parts)
            {
                text.AppendLine(
                    $"  {part.Product} ({part.ProductShare} of the candle) declares {part.DeclaredShare}: {part.Low} to {part.High}"
                );
            }

            foreach (SubstanceHazard hazard in s.Hazards)
            {
                string m =
                    hazard.Category.MultipliedBy != MFactorKind.None
                        ? $", M = {Figures.Plain(hazard.M)}{(hazard.MIsKnown ? "" : " (nobody gives it)")}"
                        : "";
                string limits = string.Concat(
                    (s.LimitsIn(hazard.Category.Group)?.Limits ?? []).Select(l => $", from {l.From} on {l.Category.Code}")
                );
                text.AppendLine($"  {hazard.Category.Code}, {hazard.StatementWithOrgans}{m}{limits}: {hazard.Source}");
            }

            foreach (SubstanceHazard hazard in s.FromLimits)
            {
                IEnumerable<string> limits = s.LimitsIn(hazard.Category.Group)!.Limits.Select(l => $"from {l.From} on {l.Category.Code}");
                text.AppendLine($"  {string.Join(", ", limits)}: {hazard.Source}");
            }

            foreach (string remark in s.Remarks)
            {
                text.AppendLine($"  {remark}");
            }

            IReadOnlyList<string> foreign = ForeignNames.LanguagesOf(a.Edition, a.Languages);
            if (foreign.Count > 0 && a.Label.Named.Any(n => n.Name == s.Name))
            {
                text.AppendLine(
                    $"  On the label it is called {s.Name} in {string.Join(", ", foreign)} too, its international name: the table's names in other languages are not at hand."
                );
            }
        }

        return found;
    }

    private static void Write(StringBuilder text, Working working, string stricter)
    {
        text.AppendLine().AppendLine($"  formula:   {working.Formula}");
        foreach (WorkingLine line in working.Lines)
        {
            string factor = line.Factor == 1 ? "" : $" x {Figures.Plain(line.Factor)}";
            text.AppendLine(
                $"  input:     {line.Substance} ({line.Cas ?? "no CAS"}), {line.Hazard}: {Figures.Plain(line.Percent)} %{factor}, own limit {Figures.Plain(line.Limit)}, adds {Figures.Plain(line.Adds)}"
            );
            text.AppendLine($"             {line.Source}");
        }

        if (working.Value is { } value)
        {
            text.AppendLine($"  value:     {Figures.Plain(value)} {working.Unit}");
        }

        text.AppendLine($"  threshold: {Figures.Plain(working.Threshold)} {working.Unit}");
        text.AppendLine($"  clause:    {working.Clause}");
        text.AppendLine($"  row:       {working.Confidence}");
        if (stricter.Length > 0)
        {
            text.AppendLine($"  reading:   {stricter}");
        }
    }
}
