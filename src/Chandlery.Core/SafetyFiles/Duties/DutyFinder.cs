using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Incidents;
using Chandlery.Core.SafetyFiles.Listings;
using Chandlery.Core.SafetyFiles.Tests;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Duties;

/// <summary>Says which duties hold for a candle, and by what the declarations show that they are done.</summary>
/// <param name="catalogue">The maker's declarations.</param>
/// <param name="lawbook">The law.</param>
public sealed class DutyFinder(Catalogue catalogue, Lawbook lawbook)
{
    /// <summary>Places of an assessment for which no duties are known.</summary>
    public IEnumerable<Place> WithoutRules(Assessment a) => a.Places.Where(p => lawbook.Safety.For(lawbook.Safety.Duties, p.Code) is null);

    /// <summary>The duties of a candle at its places on its day.</summary>
    public IReadOnlyList<DutyLine> Of(Assessment a) =>
        [
            .. a
                .Places.SelectMany(p =>
                    (lawbook.Safety.For(lawbook.Safety.Duties, p.Code)?.Rows ?? [])
                        .Where(row => row.Of.Contains(a.Kind.Sort))
                        .Where(row => row.SoldIn.Count == 0 || row.SoldIn.Contains(p.Code.Text))
                        .Select(row => (row, p.Code))
                )
                .GroupBy(d => d.row)
                .Select(g => Line(a, g.Key, [.. g.Select(d => d.Code)])),
        ];

    private DutyLine Line(Assessment a, DutyRow duty, IReadOnlyList<string> places)
    {
        if (duty.InForce.From is { } from && a.AsOf < from)
        {
            return new DutyLine(duty, places, DutyState.Later, $"due from {IsoDay.Plain(from)}");
        }

        (DutyState state, string shown) = Shown(a, duty.By, places);
        return new DutyLine(duty with { Says = a.Kind.Say(duty.Says) }, places, state, shown);
    }

    private (DutyState, string) Shown(Assessment a, Artefact by, IReadOnlyList<string> places) =>
        by switch
        {
            Artefact.Assessment => a.StopsSale
                ? (DutyState.Open, $"something stops the sale: {a.Findings.First(f => f.Gravity == Gravity.Stop).What}")
                : (DutyState.Done, a.Candle.Place.File),
            Artefact.BatchCode => a.BatchCode is null && BatchesOf(a).Count == 0
                ? (DutyState.Open, a.Kind.Say("no batch is declared, and the candle names no batch code"))
                : (DutyState.Done, a.BatchCode ?? string.Join(", ", BatchesOf(a).Select(b => b.Place.File))),
            Artefact.Roles => a.Roles.Findings is [var missing, ..] ? (DutyState.Open, missing.What) : (DutyState.Done, a.Maker.Place.File),
            Artefact.Card => a.StopsSale
                ? (DutyState.Open, "something stops the sale")
                : (DutyState.Done, "'chandlery card' in " + string.Join(", ", a.Languages.Select(l => l.Name))),
            Artefact.TechnicalFile => InQuestion(a) is { } open
                ? (DutyState.Open, $"{open.Id} puts a risk of the technical file in question: review it, then close the incident")
                : (DutyState.ByHand, "'chandlery technical-file' prints it: sign it and keep it"),
            Artefact.Procedure => (DutyState.ByHand, "'chandlery procedure' prints it: fill in who does what, sign it and keep it"),
            Artefact.Tests => Tests(a),
            Artefact.Lots => Lots(a),
            Artefact.Dispatches => Each(
                a,
                b => catalogue.OfKind<Dispatch>().Any(d => d.Batch.Id == b.Id),
                "no dispatch is declared of {0}",
                "dispatches of every batch"
            ),
            Artefact.Incidents => Incidents(a),
            Artefact.Listing => Listing(a, ListingUse.Shop, places),
            Artefact.Advert => Listing(a, ListingUse.Advert, places),
            Artefact.Weighings => Weighings(a, places),
            Artefact.Packaging => a.Candle.Packaging is null
                ? (DutyState.Open, a.Kind.Say("the candle declares no 'packaging'"))
                : (DutyState.Done, "'chandlery packaging' sums it; registering in each country is done by hand"),
            Artefact.Answers => Answers(a),
            Artefact.Wick => a.Candle.Answers.MetalCoreWick switch
            {
                null => (DutyState.Open, a.Kind.Say("not answered under 'answers' of the candle")),
                true => (DutyState.ByHand, "a wick has a core of metal: keep its supplier's statement on lead"),
                false => (DutyState.Done, a.Candle.Place.File),
            },
            Artefact.Ufi => a.Ufi is { } ufi ? (DutyState.ByHand, $"UFI {ufi}: notify it with the facts of 'chandlery dossier'")
            : a.Findings.Any(f => f.Gravity == Gravity.Stop && f.Clause == a.Edition.Ufi.Clause)
                ? (DutyState.Open, "a UFI is needed and cannot be made yet")
            : (DutyState.NotDue, a.Kind.Say("the candle needs no UFI")),
            _ => (DutyState.ByHand, "nothing that is declared shows it"),
        };

    private Incident? InQuestion(Assessment a) =>
        catalogue.OfKind<Incident>().FirstOrDefault(i => i.Candle.Id == a.Candle.Id && i.Closed is null && i.Risks.Count > 0);

    private List<Batch> BatchesOf(Assessment a) => [.. catalogue.BatchesOf(a.Candle)];

    private (DutyState, string) Each(Assessment a, Func<Batch, bool> holds, string lacking, string done)
    {
        List<Batch> batches = BatchesOf(a);
        return batches.Count == 0 ? (DutyState.Open, "no batch is declared")
            : batches.Find(b => !holds(b)) is { } bad
                ? (DutyState.Open, string.Format(System.Globalization.CultureInfo.InvariantCulture, lacking, bad.Code))
            : (DutyState.Done, done);
    }

    private (DutyState, string) Tests(Assessment a)
    {
        if (!a.Kind.Burns)
        {
            return (DutyState.ByHand, $"no test of a {a.Kind.Name} is kept by the program: note in the technical file what was tried");
        }

        CandleTests tests = CandleTests.Of(a.Candle, catalogue, lawbook.Safety.File.Value);
        return tests.IsDone ? (DutyState.Done, tests.Valid[0].Test.Place.File) : (DutyState.Open, tests.Missing[0]);
    }

    private (DutyState, string) Lots(Assessment a)
    {
        foreach (Batch batch in BatchesOf(a))
        {
            if (LotCoverage.Lacking(batch, a.Candle, catalogue) is [var first, ..])
            {
                return (DutyState.Open, $"{batch.Code} names no lot of {first}");
            }
        }

        return Each(a, _ => true, "", "lots named by every batch");
    }

    private (DutyState, string) Incidents(Assessment a)
    {
        List<IncidentClock> clocks =
        [
            .. IncidentClocks.Of(catalogue, lawbook.Safety, a.AsOf).Where(c => c.Incident.Candle.Id == a.Candle.Id),
        ];
        return clocks.Find(c => c.State is ClockState.Overdue or ClockState.Open or ClockState.Unknown) is { } open
            ? (
                DutyState.Open,
                open.Clock is { } clock
                    ? $"{open.Incident.Id}: {clock.Id} due {IsoDay.Plain(open.Due!.Value)}"
                    : $"{open.Incident.Id}: no rule is known for {open.Incident.Country}"
            )
            : (DutyState.Done, clocks.Count == 0 ? "no incident is declared" : "'chandlery incidents' lists them, every report made");
    }

    private (DutyState, string) Listing(Assessment a, ListingUse use, IReadOnlyList<string> places)
    {
        if (a.StopsSale)
        {
            return (DutyState.Open, "something stops the sale");
        }

        List<string> without = [.. a.Languages.Where(l => lawbook.Safety.Words.Find(l.Code) is null).Select(l => l.Name)];
        return without.Count > 0 ? (DutyState.Open, $"there are no words for it in {string.Join(", ", without)}")
            : use == ListingUse.Advert
            && ListingMaker.Make(a, a.Languages[0], lawbook.Safety.Words.Find(a.Languages[0].Code)!, lawbook, use).Lines.Count == 0
                ? (DutyState.NotDue, a.Kind.Say("the candle has no hazards to name"))
            : (
                DutyState.ByHand,
                $"'chandlery listing --for {use.ToString().ToLowerInvariant()}' writes it for {string.Join(", ", places)}: put it there"
            );
    }

    private (DutyState, string) Weighings(Assessment a, IReadOnlyList<string> places)
    {
        if (!a.Candle.EMark)
        {
            return (DutyState.NotDue, a.Kind.Say("the candle has no e-mark"));
        }

        QuantityRules? rules = places
            .Select(p => lawbook.Safety.For(lawbook.Safety.Quantities, p))
            .OfType<QuantityRules>()
            .FirstOrDefault();
        if (rules is null)
        {
            return (DutyState.ByHand, "no rule on contents is known");
        }

        (Batch Batch, WeighingVerdict? Newest) bad = EMarks
            .Of(catalogue, rules)
            .FirstOrDefault(e => e.Batch.Candle.Id == a.Candle.Id && e.Newest?.Passes != true);
        return bad.Batch is null
            ? (DutyState.Done, "weighings of every batch pass")
            : (DutyState.Open, bad.Newest is null ? $"{bad.Batch.Code} was not weighed" : $"{bad.Batch.Code} did not pass");
    }

    private static (DutyState, string) Answers(Assessment a)
    {
        SafetyAnswers answers = a.Candle.Answers;
        return answers.LooksLikeFood is null || answers.ForChildren is null
                ? (DutyState.Open, a.Kind.Say("not answered under 'answers' of the candle"))
            : answers.LooksLikeFood == true || answers.ForChildren == true ? (DutyState.Open, "the answers stop the sale")
            : (DutyState.Done, a.Candle.Place.File);
    }
}
