using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>Says how a working temperature stands to the flash points of the oils in the pot.</summary>
internal static class FlashNote
{
    /// <summary>The note.</summary>
    /// <param name="temperature">The working temperature; null when not declared.</param>
    /// <param name="oils">The oils in the pot, one at least.</param>
    public static string Of(Celsius? temperature, IReadOnlyList<Oil> oils)
    {
        List<Oil> known = [.. oils.Where(o => o.FlashPoint is not null).OrderBy(o => o.FlashPoint!.Temperature.Value)];
        List<string> unknown = [.. oils.Where(o => o.FlashPoint is null).Select(o => o.Name)];
        string silent = unknown.Count > 0 ? $" Unknown: {string.Join(", ", unknown)}: ask the supplier." : "";
        if (known.Count == 0)
        {
            return $"Stay below the lowest flash point: none is declared.{silent}";
        }

        string all = string.Join(", ", known.Select(o => $"{o.Name} {o.FlashPoint}"));
        if (temperature is not { } now)
        {
            return $"Stay below the lowest flash point: {all}.{silent}";
        }

        List<Oil> reached = [.. known.Where(o => now.Value >= o.FlashPoint!.Temperature.Value)];
        double room = known[0].FlashPoint!.Temperature.Value - now.Value;
        return reached.Count > 0
            ? $"TOO HOT: at or above the flash point of {string.Join(", ", reached.Select(o => o.Name))}, where vapour over the pot can catch fire ({all}).{silent}"
            : $"{Figures.Plain(room)} °C below the lowest flash point ({all}).{silent}";
    }
}
