using Chandlery.Core.Hazards;

namespace Chandlery.Core.Labelled;

/// <summary>The signal word of the label.</summary>
/// <param name="Code">Which.</param>
/// <param name="Because">The reason.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record SignalWordChoice(SignalWord Code, string Because, Citation Clause) : LabelChoice(Because, Clause)
{
    /// <inheritdoc/>
    public override string Text => Code.Text;
}
