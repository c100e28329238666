using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Notified;

/// <summary>When an update of the notification, and a new UFI, are due between two states of a composition.</summary>
public static class NotificationUpdate
{
    /// <summary>The reasons; none when what was notified still covers it.</summary>
    /// <param name="rules">What the law asks for.</param>
    /// <param name="before">What was notified.</param>
    /// <param name="after">What is in it now.</param>
    public static IEnumerable<string> Reasons(
        PoisonCentreRules rules,
        IReadOnlyList<NotifiedShare> before,
        IReadOnlyList<NotifiedShare> after
    )
    {
        foreach (NotifiedShare old in before)
        {
            NotifiedShare? now = after.FirstOrDefault(a => a.Name == old.Name);
            if (now is null)
            {
                yield return $"{old.Name} is gone";
            }
            else if (IsBeyond(rules, old.Share, now.Share, out double allowed))
            {
                yield return $"{old.Name} goes from {Figures.Plain(old.Share.Value)} to {Figures.Plain(now.Share.Value)} %, by more than {Figures.Plain(allowed)} % of itself";
            }
        }

        foreach (NotifiedShare now in after.Where(a => before.All(b => b.Name != a.Name)))
        {
            yield return $"{now.Name} is new";
        }
    }

    private static bool IsBeyond(PoisonCentreRules rules, MassPercent old, MassPercent now, out double allowed)
    {
        allowed = rules.ShareChanges.First(c => old > c.Above || c.Above == MassPercent.Zero).OfItselfPercent;
        double change = Math.Abs(now.Value - old.Value);
        return change > (old.Value * allowed / 100) + MassPercent.RelativeTolerance;
    }
}
