namespace Chandlery.Workbench.Answers;

/// <summary>What is weighed and minded at the bench.</summary>
internal sealed record BenchAnswer
{
    /// <summary>The batch's code, counted up.</summary>
    public required string Code { get; init; }

    /// <summary>What goes into the scented melt, in the order of weighing.</summary>
    public required IReadOnlyList<BenchWeight> FirstPour { get; init; }

    /// <summary>What goes into the second pour; empty when there is none or it comes from the same melt.</summary>
    public required IReadOnlyList<BenchWeight> TopUp { get; init; }

    /// <summary>First pour into one vessel, g.</summary>
    public required double FirstPourEach { get; init; }

    /// <summary>Second pour into one vessel, g; zero when there is none.</summary>
    public required double TopUpEach { get; init; }

    /// <summary>How many vessels make one that is sold, such as the cups of a box of tea lights.</summary>
    public required int Pieces { get; init; }

    /// <summary>Whether the second pour comes from the same melt.</summary>
    public required bool IsTopUpScented { get; init; }

    /// <summary>Temperatures in the order of the work.</summary>
    public required IReadOnlyList<BenchTemperature> Temperatures { get; init; }

    /// <summary>The lowest flash point of the oils, °C; null when none is known.</summary>
    public required double? LowestFlashCelsius { get; init; }
}
