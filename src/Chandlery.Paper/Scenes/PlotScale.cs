namespace Chandlery.Paper.Scenes;

/// <summary>Figures for the axes of plots.</summary>
internal static class PlotScale
{
    /// <summary>Steps of 1, 2 or 5 times a power of ten from 0 on, so that an axis has few figures and round ones.</summary>
    /// <param name="last">Where the axis ends, above 0.</param>
    /// <param name="most">How many steps at most; three at least.</param>
    public static IEnumerable<double> Ticks(double last, int most)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(last)));
        double step = new[] { power / 10, power / 5, power / 2, power, power * 2, power * 5 }.First(s => last / s <= most);
        for (int i = 0; i * step <= last; i++)
        {
            yield return i * step;
        }
    }
}
