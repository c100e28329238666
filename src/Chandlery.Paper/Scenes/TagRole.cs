namespace Chandlery.Paper.Scenes;

/// <summary>What a part of a document is (standard structure types of ISO 32000-1, 14.8.4).</summary>
public enum TagRole
{
    /// <summary>A heading of the first rank.</summary>
    Heading,

    /// <summary>A paragraph.</summary>
    Paragraph,

    /// <summary>A drawing that says something.</summary>
    Figure,

    /// <summary>A table.</summary>
    Table,

    /// <summary>A row of a table.</summary>
    TableRow,

    /// <summary>A cell that heads a column.</summary>
    TableHeader,

    /// <summary>Another cell.</summary>
    TableCell,
}
