using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A complaint, an accident or a letter of an authority, and what was done about it.</summary>
public sealed record Incident : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>What it is.</summary>
    public required IncidentKind Kind { get; init; }

    /// <summary>The candle.</summary>
    public required Reference Candle { get; init; }

    /// <summary>The batch; null when not known.</summary>
    public required Reference? Batch { get; init; }

    /// <summary>Country code of the place where it happened.</summary>
    public required string Country { get; init; }

    /// <summary>The day on which the maker came to know of it.</summary>
    public required DateOnly Known { get; init; }

    /// <summary>What happened.</summary>
    public required string Happened { get; init; }

    /// <summary>What harm was done.</summary>
    public required Harm Harm { get; init; }

    /// <summary>Short names of the risks of the technical file that it touches; empty when none is named.</summary>
    public IReadOnlyList<Written<string>> Risks { get; init; } = [];

    /// <summary>What was found out; null when nothing yet.</summary>
    public required string? Found { get; init; }

    /// <summary>What was done, each with its day.</summary>
    public required IReadOnlyList<DayNote> Done { get; init; }

    /// <summary>To whom it was reported, each with its day.</summary>
    public required IReadOnlyList<IncidentReport> Reported { get; init; }

    /// <summary>When it was closed; null when it is open.</summary>
    public required DateOnly? Closed { get; init; }

    /// <summary>Who told of it; null when nobody is named.</summary>
    public required Receiver? Person { get; init; }

    /// <summary>When that one's name was taken out; null when it stands or never stood.</summary>
    public required DateOnly? Forgotten { get; init; }
}
