using System.Text.Encodings.Web;
using System.Text.Json;
using Chandlery.Core.Hazards;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Assessed.Reports;

/// <summary>The published form of an assessment (schema: <c>data/schemas/assessment.schema.json</c>).</summary>
public static class AssessmentJson
{
    private static readonly AssessmentJsonContext Context = new(
        new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            WriteIndented = true,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        }
    );

    /// <summary>One assessment as an object.</summary>
    public static string Write(Assessment assessment) => JsonSerializer.Serialize(Report(assessment), Context.AssessmentReport) + "\n";

    /// <summary>Several assessments as an array.</summary>
    public static string Write(IEnumerable<Assessment> assessments) =>
        JsonSerializer.Serialize([.. assessments.Select(Report)], Context.AssessmentReportArray) + "\n";

    private static AssessmentReport Report(Assessment a) =>
        new AssessmentReport
        {
            Candle = a.Id,
            Name = a.Candle.Name,
            BatchCode = a.BatchCode,
            Edition = a.Edition.Id,
            AsOf = IsoDay.Plain(a.AsOf),
            SoldIn = [.. a.Places.Select(p => p.Code)],
            Languages = [.. a.Languages.Select(l => l.Code)],
            LoadPercent = new LoadReport(
                Round(a.Composition.Recipe.MeltLoadOfWax),
                Round(a.Composition.Recipe.MeltLoadOfCandle),
                Round(a.Composition.Recipe.Load),
                Round(a.Composition.Recipe.TopUp)
            ),
            Composition =
            [
                .. a.Composition.Ingredients.Select(i => new IngredientReport(
                    i.Identity.Name,
                    i.Identity.Cas?.Text,
                    Round(i.Low),
                    Round(i.High)
                )),
            ],
            UnknownPercent = Round(a.Composition.UnknownHigh),
            Classes =
            [
                .. a.Classification.Classes.Select(c => new ClassReport(
                    c.Category.ClassCode,
                    CategoryOf(c.Category),
                    c.Statement,
                    WorkingReport.Of(c.Working, a.Kind)
                )),
            ],
            Statements = new StatementsReport(
                [.. a.Label.Hazard.Select(s => Statement(a, s))],
                [.. a.Label.Supplemental.Select(s => Statement(a, s))],
                [.. a.Label.Precautionary.Select(s => Statement(a, s))]
            ),
            Pictograms = [.. a.Label.Pictograms.Select(p => p.Text)],
            SignalWord = a.Label.SignalWord?.Text,
            NamedSubstances = [.. a.Label.Named.Select(n => new NamedReport(n.Name, n.Cas, a.Kind.Say(n.Because), n.Clause))],
            LeftOff = [.. a.Label.LeftOff.Select(c => Choice(a, c))],
            SmallPackageMayLeaveOff = [.. a.SmallPackageRelief.Select(c => Choice(a, c))],
            Ufi = a.Ufi,
            Limits =
            [
                .. a.Limits.Select(l => new LimitReport
                {
                    Name = a.Kind.Say(l.Name),
                    Value = Round(l.Value),
                    Limit = Round(l.Limit),
                    Unit = a.Kind.Say(l.Unit),
                    Margin = Round(l.Margin),
                    Holds = l.Holds,
                    Source = l.Source,
                    Explanation = a.Kind.Say(l.Explanation),
                }),
            ],
            Unassessed = [.. a.Unassessed.Select(a.Kind.Say)],
            Findings = [.. a.Findings.Select(f => new FindingReport(f.Gravity == Gravity.Stop, f.What, f.Clause))],
            StopsSale = a.StopsSale,
            NextLawChange = Change(a.NextLaw),
            NextExpectedChange = Change(a.NextExpected),
        };

    private static ChoiceReport Choice(Assessment a, LabelChoice choice) => new(choice.Text, a.Kind.Say(choice.Because), choice.Clause);

    private static ChangeReport? Change(LegalChange? change) =>
        change is null ? null : new(IsoDay.Plain(change.On), change.What, change.Clause);

    private static string CategoryOf(HazardCategory category) =>
        category.Variant.Length == 0 ? category.Category : $"{category.Category} ({category.Variant})";

    private static StatementReport Statement(Assessment a, StatementChoice choice)
    {
        Language language = a.Languages.FirstOrDefault(l => l.Code == "en") ?? a.Languages[0];
        return new StatementReport(
            choice.Code,
            StatementText.Printed(language, choice.Code, a.Label),
            a.Kind.Say(choice.Because),
            choice.Clause
        );
    }

    // Twelve decimals hide the last bits of binary fractions and nothing that anybody can weigh.
    private static double Round(MassPercent percent) => Math.Round(percent.Value, 12);

    private static double? Round(double? value) => value is { } v && double.IsFinite(v) ? Math.Round(v, 12) : null;
}
