using Chandlery.Core.Hazards;

namespace Chandlery.Core.Labelled;

/// <summary>A statement on the label.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Because">The reason.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record StatementChoice(StatementCode Code, string Because, Citation Clause) : LabelChoice(Because, Clause)
{
    /// <inheritdoc/>
    public override string Text => Code.Text;
}
