namespace Chandlery.Tests.SecondCalculation;

/// <summary>Random mixtures whose shares crowd around the limits of the law. One seed makes one mixture, always the same.</summary>
internal sealed class RandomMixtures
{
    private const double LeastPercent = 1e-7;

    // Exactly at, a hair below, a hair above, clearly below and above.
    private static readonly double[] Beside = [1, 1, 1, 0.999, 0.9999, 1.001, 1.0001, 0.5, 2];

    private static readonly double[] Sums = [1, 3, 5, 10, 20, 25];

    private readonly Dice dice;
    private readonly RandomHazards hazards;
    private readonly bool liquid;

    private RandomMixtures(int seed, bool liquid)
    {
        this.liquid = liquid;
        dice = new Dice(seed);
        hazards = new RandomHazards(dice);
    }

    /// <summary>The mixture of this seed.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="liquid">True for a liquid.</param>
    public static GivenMixture Make(int seed, bool liquid) => new RandomMixtures(seed, liquid).Make();

    private GivenMixture Make()
    {
        List<SubstanceDraft> drafts = [.. Enumerable.Range(0, 1 + dice.Below(12)).Select(_ => Substance())];
        if (dice.Falls(0.35))
        {
            ShareOut(drafts);
        }

        if (dice.Falls(0.02))
        {
            drafts.AddRange(JustChronic4());
        }

        double undeclared = dice.Falls(0.25) ? dice.Pick([10, 10, 9.99, 10.001, 5, 0.5, 30]) : 0;
        double unknown = drafts.Where(d => d.Unknown).Sum(d => d.Percent);
        if (dice.Falls(0.5) && unknown is > 0 and < 10)
        {
            undeclared = 10 - unknown;
        }

        while (drafts.Count > 1 && drafts.Sum(d => d.Percent) + undeclared > 100)
        {
            drafts.RemoveAt(dice.Below(drafts.Count));
        }

        if (drafts[0].Percent + undeclared > 100)
        {
            undeclared = 0;
        }

        return new GivenMixture(
            [.. drafts.Select((d, i) => d.Finish("s" + (i + 1)))],
            undeclared,
            liquid ? new RandomLiquids(dice).Make() : null
        );
    }

    private SubstanceDraft Substance()
    {
        var draft = new SubstanceDraft { Unknown = dice.Falls(0.06) };
        if (draft.Unknown)
        {
            draft.Turns.AddRange([0.5, 1, 3, 7, 10]);
        }
        else
        {
            for (int i = dice.Below(4); i >= 0; i--)
            {
                hazards.AddTo(draft);
            }
        }

        double percent =
            draft.Turns.Count > 0 && dice.Falls(0.8) ? dice.Pick(draft.Turns) * dice.Pick(Beside) : dice.Logarithmic(0.001, 60);
        draft.Percent = Math.Clamp(Rounded(percent), LeastPercent, 100);
        return draft;
    }

    /// <summary>Rare by itself: a Chronic 1 far below 0.1 % whose M-factor makes it count where Chronic 4 only just is reached.</summary>
    private List<SubstanceDraft> JustChronic4()
    {
        double m = dice.Pick<double>([10, 100, 1000]);
        var first = new SubstanceDraft { ChronicM = m, Percent = Rounded(dice.Pick([0.0999, 0.1, 0.2]) / m) };
        first.Classes.Add("Aquatic Chronic 1, H410");
        var fourth = new SubstanceDraft { Percent = Rounded((25 * dice.Pick([1, 0.99999])) - first.Percent) };
        fourth.Classes.Add("Aquatic Chronic 4, H413");
        return [first, fourth];
    }

    /// <summary>Gives some substances shares that together make a limit exactly or just miss it.</summary>
    private void ShareOut(List<SubstanceDraft> drafts)
    {
        double left = dice.Pick(Sums) * dice.Pick(Beside);
        List<SubstanceDraft> sharing = [.. dice.Shuffle(drafts).Take(2 + dice.Below(3))];
        foreach (SubstanceDraft draft in sharing.SkipLast(1))
        {
            draft.Percent = Math.Max(LeastPercent, Rounded(left * dice.Pick([0.1, 0.2, 0.5, 0.7])));
            left -= draft.Percent;
        }

        sharing[^1].Percent = Math.Max(LeastPercent, Rounded(left));
    }

    private static double Rounded(double percent) => (double)Math.Round((decimal)percent, 9);
}
