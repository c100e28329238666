using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>A part of the sheet that is computed.</summary>
internal interface ISheetPart
{
    /// <summary>What rows of data call it.</summary>
    SheetPart Name { get; }

    /// <summary>Its blocks; asked for only where the row's conditions hold.</summary>
    IEnumerable<SheetBlock> Make(SheetContext context);
}
