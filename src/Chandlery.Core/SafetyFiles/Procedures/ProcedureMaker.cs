using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Duties;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Core.SafetyFiles.Tests;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Procedures;

/// <summary>
/// Writes how a maker looks after the safety of products, filled from what is declared. Names of those who do it are left to be
/// written by hand: who works in a workshop is declared nowhere.
/// </summary>
/// <param name="a">A product at its places: their law is the one that is named.</param>
/// <param name="catalogue">The maker's declarations.</param>
/// <param name="lawbook">The law.</param>
/// <param name="words">Words of the language.</param>
public sealed class ProcedureMaker(Assessment a, Catalogue catalogue, Lawbook lawbook, SafetyWords words)
{
    private static readonly string[] Answering = ["roleSafety", "roleComplaints", "roleAuthorities", "roleRecall"];

    private readonly IReadOnlyList<Candle> products = [.. catalogue.OfKind<Candle>()];
    private readonly IReadOnlyList<Batch> batches = [.. catalogue.OfKind<Batch>()];

    /// <summary>The page.</summary>
    public SafetyProcedure Make() =>
        new(
            words.Code,
            words.Words,
            a.Roles.Maker.OnOneLine,
            [.. About()],
            [
                Task("risks", Artefact.TechnicalFile, W("stateProducts", ("n", products.Count))),
                Task("tests", Artefact.Tests, W("stateTests", ("n", catalogue.OfKind<Test>().Count()), ("open", Untested))),
                Task("changes", Artefact.TechnicalFile, ""),
                Task("batches", Artefact.BatchCode, W("stateBatches", ("n", batches.Count))),
                Task("suppliers", Artefact.Lots, W("stateLots", ("n", catalogue.OfKind<Lot>().Count()), ("open", WithoutLots))),
                Task("customers", Artefact.Dispatches, W("stateSent", ("n", catalogue.OfKind<Dispatch>().Count()), ("open", Unsent))),
                Task("complaints", Artefact.Incidents, W("stateIncidents", ("n", Incidents.Count), ("open", Open))) with
                {
                    How = W("complaintsHow", ("contact", Contact)),
                },
                Task("accidents", Artefact.Incidents, ""),
                Task("recall", Artefact.Dispatches, W("stateRecall")) with
                {
                    Clause = Listed(Recalls.Select(r => r.AuthorityClause)),
                },
                Keeping(),
                Task("names", Artefact.Roles, Named()),
            ],
            [.. Answering.Select(key => W(key))]
        );

    private IReadOnlyList<Incident> Incidents => [.. catalogue.OfKind<Incident>()];

    private int Open => Incidents.Count(i => i.Closed is null);

    private int Unsent => batches.Count(b => !catalogue.OfKind<Dispatch>().Any(d => d.Batch.Id == b.Id));

    private int WithoutLots =>
        batches.Count(b => products.FirstOrDefault(c => c.Id == b.Candle.Id) is { } of && LotCoverage.Lacking(b, of, catalogue).Count > 0);

    private int Untested
    {
        get
        {
            var kinds = new DeclaredKinds(lawbook.Kinds);
            return products.Count(c => kinds.Of(c).Burns && !CandleTests.Of(c, catalogue, lawbook.Safety.File.Value).IsDone);
        }
    }

    private string Contact =>
        string.Join(", ", new[] { a.Roles.Maker.Telephone, a.Roles.Maker.Electronic }.Where(c => !string.IsNullOrEmpty(c)));

    private IEnumerable<string> About()
    {
        string clause = ClauseOf(Artefact.Procedure);
        yield return W("made", ("date", IsoDay.Plain(a.AsOf)));
        yield return clause.Length > 0
            ? W("about", ("clause", clause))
            : W("aboutNone", ("places", string.Join(", ", a.Places.Select(p => p.Code.Text))));
    }

    private IReadOnlyList<RecallRules> Recalls =>
        [.. a.Places.Select(p => lawbook.Safety.For(lawbook.Safety.Recalls, p.Code)).OfType<RecallRules>().Distinct()];

    // The sentences and figures of several places, each said once.
    private ProcedureTask Keeping()
    {
        List<(string Says, IEnumerable<Citation> Clauses)> known =
        [
            .. new[] { ("keepFile", Kept.TechnicalFile), ("keepChain", Kept.SupplyChain), ("keepPersons", Kept.Complainants) }
                .Select(k => (Key: k.Item1, Rows: Recalls.Select(r => r.KeepOf(k.Item2)).OfType<KeepRow>().ToList()))
                .Where(k => k.Rows.Count > 0)
                .Select(k =>
                    (W(k.Key, ("n", string.Join(" / ", k.Rows.Select(r => r.Years).Distinct().Order()))), k.Rows.Select(r => r.Clause))
                ),
        ];
        return new ProcedureTask(
            W("keeping"),
            known.Count > 0 ? string.Join(' ', known.Select(k => k.Says)) : W("keepNone"),
            "",
            Listed(known.SelectMany(k => k.Clauses))
        );
    }

    private string Named() =>
        a.Roles.Findings.Count > 0 ? W("namesOpen")
        : a.Roles.Others.Count == 0 ? W("namesNone")
        : string.Join("; ", a.Roles.Others.Select(o => o.Party.OnOneLine));

    private ProcedureTask Task(string key, Artefact by, string state) => new(W(key), W(key + "How"), state, ClauseOf(by));

    private string ClauseOf(Artefact by) =>
        Listed(
            a.Places.SelectMany(p => lawbook.Safety.For(lawbook.Safety.Duties, p.Code)?.Rows ?? [])
                .Where(row => row.By == by && row.Of.Contains(a.Kind.Sort))
                .Select(row => row.Clause)
        );

    // As the sheets of the language cite; names of acts stay.
    private string Cited(string clause) => lawbook.SheetWords.Find(words.Code)?.Told.Cited(clause) ?? clause;

    private string Listed(IEnumerable<Citation> clauses) => string.Join("; ", clauses.Select(c => Cited(c.Text)).Distinct());

    private string W(string key, params IEnumerable<(string Mark, object Value)> marks) =>
        NoticeText.Fill(words.Words[key], marks.Select(m => (m.Mark, $"{m.Value}")));
}
