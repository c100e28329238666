using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>Something that an edition tells the maker beside the label, depending on the classification.</summary>
/// <param name="When">When it is told.</param>
/// <param name="Says">The words; <c>{classes}</c> and <c>{substances}</c> stand for the candle's classes and the substances behind them.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record Notice(NoticeWhen When, string Says, Citation Clause);
