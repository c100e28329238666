using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles;

/// <summary>Looks whether what is kept refers to declarations that there are: a dispatch of no batch would never be found again.</summary>
public static class KeptReferences
{
    /// <summary>Notes every reference that leads nowhere.</summary>
    /// <param name="catalogue">The maker's declarations.</param>
    /// <param name="risks">The risks that the technical file knows.</param>
    /// <param name="problems">Collects what leads nowhere.</param>
    public static void Check(Catalogue catalogue, IReadOnlyList<RiskRow> risks, Problems problems)
    {
        foreach (Lot lot in catalogue.OfKind<Lot>())
        {
            Check(lot, catalogue, problems);
        }

        foreach (Batch batch in catalogue.OfKind<Batch>())
        {
            catalogue.Find<Candle>(batch.Candle, problems);
            foreach (Reference lot in batch.Lots)
            {
                catalogue.Find<Lot>(lot, problems);
            }
        }

        foreach (Dispatch dispatch in catalogue.OfKind<Dispatch>())
        {
            catalogue.Find<Batch>(dispatch.Batch, problems);
        }

        foreach (Weighing weighing in catalogue.OfKind<Weighing>())
        {
            catalogue.Find<Batch>(weighing.Batch, problems);
        }

        foreach (Test test in catalogue.OfKind<Test>())
        {
            catalogue.Find<Candle>(test.Candle, problems);
            if (test.Vessel is { } vessel)
            {
                catalogue.Find<Vessel>(vessel, problems);
            }

            catalogue.Find<Wax>(test.Wax, problems);
        }

        foreach (Trial trial in catalogue.OfKind<Trial>())
        {
            foreach (OilPart part in trial.Oils)
            {
                catalogue.Find<Oil>(part.Oil, problems);
            }

            if (trial.Wax is { } wax)
            {
                catalogue.Find<Wax>(wax, problems);
            }
        }

        foreach (Incident incident in catalogue.OfKind<Incident>())
        {
            catalogue.Find<Candle>(incident.Candle, problems);
            if (incident.Batch is { } batch)
            {
                catalogue.Find<Batch>(batch, problems);
            }

            Check(incident, risks, problems);
        }
    }

    private static void Check(Incident incident, IReadOnlyList<RiskRow> risks, Problems problems)
    {
        foreach (Written<string> risk in incident.Risks.Where(named => risks.All(r => r.Id != named.Code)))
        {
            List<string> known = [.. risks.Select(r => r.Id)];
            problems.Add(
                risk.Place,
                $"There is no risk named '{risk.Code}'.",
                Suggestion.Nearest(risk.Code, known) is { } near ? $"Did you mean '{near}'?" : $"Known: {string.Join(", ", known)}."
            );
        }
    }

    private static void Check(Lot lot, Catalogue catalogue, Problems problems)
    {
        switch (lot.Content)
        {
            case LotContent.Oil:
                catalogue.Find<Oil>(lot.Of, problems);
                break;
            case LotContent.Wax:
                catalogue.Find<Wax>(lot.Of, problems);
                break;
            case LotContent.Extra:
                catalogue.Find<Extra>(lot.Of, problems);
                break;
            case LotContent.Vessel:
                catalogue.Find<Vessel>(lot.Of, problems);
                break;
            default:
                break;
        }
    }
}
