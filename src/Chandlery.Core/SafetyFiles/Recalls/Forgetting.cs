using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>Whose names must be taken out: kept longer than the law of the place allows.</summary>
public static class Forgetting
{
    /// <summary>Dispatches to persons that may not be kept on a day, each with the rule and the last day that was allowed.</summary>
    public static IEnumerable<(Dispatch Dispatch, KeepRow Rule, DateOnly Until)> Overdue(
        Catalogue catalogue,
        ProductSafetyLaw law,
        DateOnly day
    ) =>
        catalogue
            .OfKind<Dispatch>()
            .Where(d => d is { ToWhom: ReceiverKind.Person, Receiver: not null })
            .Select(d => (d, Rule: law.For(law.Recalls, d.Country)?.KeepOf(Kept.Buyers)))
            .Where(f => f.Rule is not null && f.d.On.AddYears(f.Rule.Years) < day)
            .Select(f => (f.d, f.Rule!, f.d.On.AddYears(f.Rule!.Years)));

    /// <summary>Incidents whose persons may not be kept on a day.</summary>
    public static IEnumerable<(Incident Incident, KeepRow Rule, DateOnly Until)> OverdueIncidents(
        Catalogue catalogue,
        ProductSafetyLaw law,
        DateOnly day
    ) =>
        catalogue
            .OfKind<Incident>()
            .Where(i => i.Person is not null)
            .Select(i => (i, Rule: law.For(law.Recalls, i.Country)?.KeepOf(Kept.Complainants)))
            .Where(f => f.Rule is not null && f.i.Known.AddYears(f.Rule.Years) < day)
            .Select(f => (f.i, f.Rule!, f.i.Known.AddYears(f.Rule!.Years)));
}
