namespace Chandlery.Workbench.Desks;

/// <summary>How labels are put on a sheet.</summary>
/// <param name="Copies">How many labels; null to fill the sheet.</param>
/// <param name="Start">The first label that is still on the sheet, counted in rows from 1; null for the first.</param>
/// <param name="OffsetXMm">How far the printer prints too far left, millimetres.</param>
/// <param name="OffsetYMm">How far the printer prints too high, millimetres.</param>
/// <param name="IsCropMarked">Whether crop marks stand in the gutters.</param>
/// <param name="IsTest">Whether outlines and rulers are printed in the stead of labels, to find the printer's offset.</param>
public sealed record LabelSheetWish(
    int? Copies = null,
    int? Start = null,
    double OffsetXMm = 0,
    double OffsetYMm = 0,
    bool IsCropMarked = false,
    bool IsTest = false
);
