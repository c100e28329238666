using Chandlery.Core.Hazards;

namespace Chandlery.Core.Labelled;

/// <summary>A statement or pictogram that was considered and left off.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Because">The reason.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record LeftOffChoice(string Code, string Because, Citation Clause) : LabelChoice(Because, Clause)
{
    /// <inheritdoc/>
    public override string Text => Code;
}
