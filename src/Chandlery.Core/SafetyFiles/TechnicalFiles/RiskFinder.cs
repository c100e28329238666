using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Tests;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.TechnicalFiles;

/// <summary>Finds which risks are looked at for a candle, and where the proof stands.</summary>
public static class RiskFinder
{
    /// <summary>The risks, in the order of the data.</summary>
    /// <param name="a">The candle.</param>
    /// <param name="tests">Its burn tests.</param>
    /// <param name="rules">The risks that there are.</param>
    /// <param name="incidents">Its complaints, accidents and letters.</param>
    public static IReadOnlyList<RiskLine> Of(Assessment a, CandleTests tests, FileRules rules, IReadOnlyList<Incident> incidents) =>
        [
            .. rules
                .Risks.Where(r => (r.Of.Contains(a.Kind.Sort) && Holds(r.When, a)) || Touching(r, incidents).Any())
                .Select(r => Questioned(Line(r, a, tests), [.. Touching(r, incidents)])),
        ];

    private static IEnumerable<Incident> Touching(RiskRow row, IReadOnlyList<Incident> incidents) =>
        incidents.Where(i => i.Risks.Any(named => named.Code == row.Id)).OrderBy(i => i.Known);

    // What happened is stronger than any proof from before: it is in question until somebody closes the incident.
    private static RiskLine Questioned(RiskLine line, List<Incident> touching)
    {
        if (touching.Count == 0)
        {
            return line;
        }

        bool isOpen = touching.Exists(i => i.Closed is null);
        string told = string.Join(
            "; ",
            touching.Select(i =>
                $"{i.Kind.ToString().ToLowerInvariant()} {i.Id}, known {IsoDay.Plain(i.Known)}, "
                + (i.Closed is { } closed ? $"closed {IsoDay.Plain(closed)}" : "open: review")
            )
        );
        return line with { Proof = $"{line.Proof}; {told}", Holds = isOpen ? null : line.Holds, IsInQuestion = isOpen };
    }

    private static bool Holds(RiskWhen when, Assessment a) =>
        when switch
        {
            RiskWhen.Glass => IsGlass(a),
            RiskWhen.OtherVessel => a.Candle.Vessel is not null && !IsGlass(a),
            RiskWhen.Indoor => a.Candle.Use == CandleUse.Indoor,
            RiskWhen.Outdoor => a.Candle.Use == CandleUse.Outdoor,
            RiskWhen.SeveralWicks => a.Candle.Wicks.Count > 1,
            RiskWhen.Scented => a.Candle.Oils.Count > 0,
            RiskWhen.Hazards => a.Classification.Classes.Count + a.Classification.Sensitisers.Count > 0,
            _ => true,
        };

    // The material is in the maker's own words.
    private static bool IsGlass(Assessment a) => a.Vessel.Material.Contains("glass", StringComparison.OrdinalIgnoreCase);

    private static RiskLine Line(RiskRow row, Assessment a, CandleTests tests) =>
        row.Proof switch
        {
            RiskProof.Card => new RiskLine(row, a.Kind.Burns ? "burn-safety card" : "card on safe use", true),
            RiskProof.Label => a.StopsSale
                ? new RiskLine(row, "something stops the sale", false)
                : new RiskLine(row, "classification and label", true),
            RiskProof.Answers => Answers(row, a.Candle.Answers, a.Kind),
            _ => Tested(row, Subject(row.Proof), tests),
        };

    private static RiskLine Answers(RiskRow row, SafetyAnswers answers, ProductKind kind) =>
        answers.LooksLikeFood is null || answers.ForChildren is null ? new RiskLine(row, "not answered", null)
        : answers.LooksLikeFood == true || answers.ForChildren == true ? new RiskLine(row, kind.Say("answers of the candle"), false)
        : new RiskLine(row, kind.Say("answers of the candle"), true);

    private static RiskLine Tested(RiskRow row, TestSubject subject, CandleTests tests)
    {
        if (tests.Valid.Count == 0)
        {
            return new RiskLine(row, "no burn test of the candle as it is", null);
        }

        JudgedTest newest = tests.Valid[0];
        if (newest.Points.FirstOrDefault(p => p.Subject == subject) is not { } point)
        {
            return new RiskLine(row, "it has no vessel; burn-safety card", true);
        }

        string limit = point.Limit.Length == 0 ? "no limit of the maker's is set" : $"own limit: {point.Limit}";
        string measured = point.Measured.Length == 0 ? "not measured" : point.Measured;
        return new RiskLine(row, $"burn test {newest.Test.Id}: {CandleTests.Called(subject)}: {measured}; {limit}", point.Holds);
    }

    private static TestSubject Subject(RiskProof proof) =>
        proof switch
        {
            RiskProof.Flame => TestSubject.Flame,
            RiskProof.Slope => TestSubject.Slope,
            RiskProof.Vessel => TestSubject.Vessel,
            RiskProof.Heat => TestSubject.Heat,
            RiskProof.Soot => TestSubject.Soot,
            RiskProof.Relit => TestSubject.Relit,
            _ => TestSubject.End,
        };
}
