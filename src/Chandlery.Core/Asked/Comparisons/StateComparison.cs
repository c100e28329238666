using Chandlery.Core.Assessed;
using Chandlery.Core.Notified;

namespace Chandlery.Core.Asked.Comparisons;

/// <summary>Compares two states of a catalogue.</summary>
public static class StateComparison
{
    private const string Class = "class";
    private const string Old = "old labels";

    private static readonly string[] OnLabel =
    [
        Class,
        "pictogram",
        "signal word",
        "hazard statement",
        "supplemental statement",
        "precautionary statement",
        "named substance",
    ];

    /// <summary>The candles that change, in the order of their names.</summary>
    public static IReadOnlyList<CandleChange> Compare(
        IReadOnlyList<CatalogueEntry<CandleState>> before,
        IReadOnlyList<CatalogueEntry<CandleState>> after
    )
    {
        Dictionary<(string, string), CandleState> old = States(before);
        Dictionary<(string, string), CandleState> now = States(after);
        var changes = new List<CandleChange>();
        foreach ((string Id, string Edition) key in old.Keys.Union(now.Keys).Order())
        {
            CandleState? was = old.GetValueOrDefault(key);
            CandleState? becomes = now.GetValueOrDefault(key);
            if (was is not null && becomes is not null)
            {
                List<StateChange> found =
                [
                    .. was.Subjects.Keys.SelectMany(s => Compare(s, was.Subjects[s], becomes.Subjects[s])),
                    .. Stale(was, becomes),
                    .. Notifications(was, becomes),
                ];
                found.AddRange(OldLabels(was, becomes, found));
                if (found.Count > 0)
                {
                    changes.Add(new CandleChange(key.Id, key.Edition, found, ""));
                }

                continue;
            }

            changes.Add(new CandleChange(key.Id, key.Edition, [], Remark(key.Id, was is null, was is null ? before : after)));
        }

        return changes;
    }

    // A class that begins is a hazard that is new or graver; a broken limit or a stop changes no label.
    private static IEnumerable<StateChange> OldLabels(CandleState was, CandleState becomes, List<StateChange> found)
    {
        if (!found.Exists(f => OnLabel.Contains(f.Subject)))
        {
            return [];
        }

        // What an act changes on its own day ends old labels that day, whatever else changes.
        if (becomes.Day > was.Day && was.NextOfElements.Value is { } change && change.On <= becomes.Day)
        {
            return [OldLabels(was, change)];
        }

        if (becomes.OldLabelsUntil is not { } days)
        {
            return [];
        }

        bool isGraver = found.Exists(f => f is { Subject: Class, Begins: true });
        DateOnly until = isGraver ? days.Graver : days.Other;
        return [new StateChange(Old, true, $"until {until:yyyy-MM-dd}, when the new classification is of today", days.Clause)];
    }

    private static StateChange OldLabels(CandleState was, LegalChange change)
    {
        string stock =
            change.StockFrom > change.On
                ? $", and until {change.StockFrom.AddDays(-1):yyyy-MM-dd} on what was placed on the market before {change.On:yyyy-MM-dd}"
                : "";
        string why = was.OfOldClasses.Length == 0 ? change.Clause.Text : $"{change.Clause}; {was.OfOldClasses}";
        return new StateChange(Old, true, $"until {change.On.AddDays(-1):yyyy-MM-dd}{stock}", why);
    }

    // What was measured belongs to the liquid that was measured.
    private static IEnumerable<StateChange> Stale(CandleState was, CandleState becomes) =>
        was.Measured is { } before && becomes.Measured is { } after && before.IsStaleIn(after)
            ?
            [
                new StateChange(
                    "measured figures",
                    false,
                    $"{after.Facts.Document ?? "what was measured"} is of the composition before: the label of the new one is not known until its flash point is measured again",
                    after.Clause
                ),
            ]
            : [];

    // Only where both states have a UFI: a first notification is no update.
    private static IEnumerable<StateChange> Notifications(CandleState was, CandleState becomes) =>
        becomes.PoisonCentres is { } rules && was.Notified.Count > 0 && becomes.Notified.Count > 0
            ? NotificationUpdate
                .Reasons(rules, was.Notified, becomes.Notified)
                .Select(reason => new StateChange(
                    "poison centres",
                    true,
                    $"an update and a new UFI are due: {reason}",
                    rules.ShareChangesClause.Text
                ))
            : [];

    private static Dictionary<(string Id, string Edition), CandleState> States(IReadOnlyList<CatalogueEntry<CandleState>> entries)
    {
        var states = new Dictionary<(string, string), CandleState>();
        foreach (CandleState state in entries.SelectMany(e => e.Results))
        {
            states[(state.Id, state.Edition)] = state;
        }

        return states;
    }

    private static IEnumerable<StateChange> Compare(string subject, IReadOnlyList<Fact> before, IReadOnlyList<Fact> after) =>
        before
            .Where(b => after.All(a => a.Text != b.Text))
            .Select(b => new StateChange(subject, false, b.Text, b.Why))
            .Concat(after.Where(a => before.All(b => b.Text != a.Text)).Select(a => new StateChange(subject, true, a.Text, a.Why)));

    private static string Remark(string id, bool missingBefore, IReadOnlyList<CatalogueEntry<CandleState>> side)
    {
        string when = missingBefore ? "before" : "after";
        return side.FirstOrDefault(e => e.Id == id) is { Problems: [var first, ..] } ? $"it cannot be assessed {when}: {first.What}"
            : missingBefore ? "it is new"
            : "it is gone";
    }
}
