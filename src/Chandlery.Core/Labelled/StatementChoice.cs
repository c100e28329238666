using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.Labelled;

/// <summary>A statement on the label.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Because">The reason.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record StatementChoice(StatementCode Code, string Because, Citation Clause) : LabelChoice(Because, Clause)
{
    /// <summary>The organs that every cause's source names, as it names them; empty where one names none.</summary>
    public string Organs { get; init; } = "";

    /// <summary>True for the statement on sensitisers, which names them.</summary>
    public bool NamesSubstances { get; init; }

    /// <summary>What it protects, where its text leaves that to the supplier.</summary>
    public Protection Protects { get; init; }

    /// <inheritdoc/>
    public override string Text => Code.Text;
}
