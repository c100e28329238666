using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>Full text of the hazard statements that sections 2 and 3 name.</summary>
internal sealed class StatementsPart : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => SheetPart.Statements;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context) =>
        [new SheetTable([14, 86], [], [.. context.StatementCodes.Select(c => new[] { c.Text, context.Statement(c) })])];
}
