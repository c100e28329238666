namespace Chandlery.Sheets.Wild;

/// <summary>How a random sheet sets its ingredients.</summary>
public enum CompositionForm
{
    /// <summary>A column for each thing, in any order.</summary>
    Columns,

    /// <summary>Name and numbers with their labels in one cell.</summary>
    Stacked,

    /// <summary>Index, EC, CAS and REACH numbers on lines of their own in one column, without labels.</summary>
    Numbers,

    /// <summary>CAS number and share in one column.</summary>
    CasWithShare,

    /// <summary>A sentence for each ingredient.</summary>
    Prose,

    /// <summary>Labelled lines, a block for each ingredient.</summary>
    Labelled,

    /// <summary>Name, CAS number and share only.</summary>
    American,

    /// <summary>Old and new classification side by side.</summary>
    OldAndNew,

    /// <summary>Labelled blocks side by side, two in a row.</summary>
    Cards,

    /// <summary>A table on its side: a row for each thing, a column for each ingredient.</summary>
    OnItsSide,

    /// <summary>Name and numbers in a line whose dots lead to the share; classes in the line below.</summary>
    Leaders,

    /// <summary>Name over its numbers in one cell, and headings of groups between the rows.</summary>
    Groups,
}
