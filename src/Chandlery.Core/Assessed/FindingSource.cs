namespace Chandlery.Core.Assessed;

/// <summary>Something that is looked at for findings.</summary>
/// <param name="MayStop">Whether a finding of it may stop the sale; where it may not, all are to be looked at only.</param>
/// <param name="Find">Looks.</param>
internal sealed record FindingSource(bool MayStop, Func<IEnumerable<Finding>> Find)
{
    /// <summary>One whose findings may stop the sale.</summary>
    public static FindingSource Stopping(Func<IEnumerable<Finding>> find) => new(true, find);

    /// <summary>One whose findings are for a person to look at and never stop the sale.</summary>
    public static FindingSource Looking(Func<IEnumerable<Finding>> find) => new(false, find);
}
