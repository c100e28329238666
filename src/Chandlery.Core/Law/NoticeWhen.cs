namespace Chandlery.Core.Law;

/// <summary>When a notice is told.</summary>
public enum NoticeWhen
{
    /// <summary>The candle has a class.</summary>
    Classified,

    /// <summary>The candle has no class.</summary>
    NotClassified,

    /// <summary>The candle has a class or holds a sensitiser that must be named.</summary>
    Implicated,

    /// <summary>Neither a class nor a sensitiser to be named.</summary>
    NotImplicated,
}
