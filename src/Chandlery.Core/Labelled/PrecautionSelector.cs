using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.Labelled;

/// <summary>Chooses precautionary statements for a candle sold to the public (CLP Art. 28).</summary>
internal static class PrecautionSelector
{
    /// <summary>What is chosen of all that is offered.</summary>
    /// <param name="rules">Offers and their ranks.</param>
    /// <param name="called">Hazard statements that call for precautions.</param>
    public static PrecautionChoice Select(PrecautionRules rules, IReadOnlyList<StatementCode> called)
    {
        var leftOff = new List<LeftOffChoice>();

        // A statement may be offered twice with different weight; the more urgent offer counts.
        List<PrecautionOffer> offers =
        [
            .. rules
                .Offers.Where(o => o.For.Any(called.Contains))
                .OrderBy(o => o.Use)
                .ThenBy(o => o.Rank)
                .DistinctBy(o => o.Code)
                .OrderBy(o => o.Rank),
        ];
        var chosen = new List<PrecautionOffer>();
        foreach (PrecautionOffer offer in offers.Where(o => o.Use == PrecautionUse.Must))
        {
            Choose(offer);
        }

        foreach (PrecautionOffer offer in offers.Where(o => o.Use == PrecautionUse.Keep))
        {
            if (chosen.Count < rules.Most)
            {
                Choose(offer);
            }
            else
            {
                leftOff.Add(new LeftOffChoice(offer.Code, $"not among the {rules.Most} most important", rules.MostClause));
            }
        }

        foreach (PrecautionOffer offer in offers.Where(o => o.Use == PrecautionUse.Drop))
        {
            string listed = offer.Condition.Length == 0 ? "" : $" (the law lists it on a condition: {offer.Condition})";
            leftOff.Add(new LeftOffChoice(offer.Code, offer.Because + listed, offer.Clause));
        }

        return new PrecautionChoice(
            [
                .. chosen
                    .OrderBy(o => o.Code.Text, StringComparer.Ordinal)
                    .Select(o => new StatementChoice(
                        o.Code,
                        $"{o.Because} (for {string.Join(", ", o.For.Where(called.Contains))})",
                        o.Clause
                    )
                    {
                        Protects = Protects(rules, o.Code, called),
                    }),
            ],
            leftOff
        );

        // Each hazard that calls for the statement adds what it harms.
        static Protection Protects(PrecautionRules rules, StatementCode code, IReadOnlyList<StatementCode> called) =>
            rules.Offers.Where(o => o.Code == code && o.For.Any(called.Contains)).Aggregate(Protection.None, (all, o) => all | o.Protects);

        void Choose(PrecautionOffer offer)
        {
            if (offer.CoveredBy is { } cover && chosen.Any(o => o.Code == cover))
            {
                leftOff.Add(new LeftOffChoice(offer.Code, $"{cover} is printed: {offer.Condition}", offer.Clause));
            }
            else
            {
                chosen.Add(offer);
            }
        }
    }
}
