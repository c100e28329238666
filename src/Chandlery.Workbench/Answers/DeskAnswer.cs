using System.Text.Json;
using System.Text.Json.Nodes;
using Chandlery.Workbench.Desks;

namespace Chandlery.Workbench.Answers;

/// <summary>A candle with its edits and what follows from them.</summary>
internal sealed record DeskAnswer
{
    /// <summary>candle or batch.</summary>
    public required string Declares { get; init; }

    /// <summary>Name of the declaration.</summary>
    public required string Id { get; init; }

    /// <summary>Hash of the text on disk, to be sent back when it is kept; null for a new one.</summary>
    public required string? Hash { get; init; }

    /// <summary>The fields with the edits; null when the text cannot be read.</summary>
    public required JsonObject? Values { get; init; }

    /// <summary>The blend in several measures; null when there is no assessment.</summary>
    public required IReadOnlyList<RecipeLine>? Recipe { get; init; }

    /// <summary>One for each edition, in the published form.</summary>
    public required IReadOnlyList<JsonElement> Assessments { get; init; }

    /// <summary>The papers that can be asked for.</summary>
    public required IReadOnlyList<PaperOffer> Papers { get; init; }

    /// <summary>What holds along the load; null when there is nothing to draw.</summary>
    public required LoadLine? Load { get; init; }

    /// <summary>The vessel from above with its wicks; null where it is not known.</summary>
    public required WickDrawing? Wicks { get; init; }

    /// <summary>The paper that was asked for.</summary>
    public required PreviewAnswer Preview { get; init; }

    /// <summary>What is wrong.</summary>
    public required IReadOnlyList<DeskProblem> Problems { get; init; }
}
