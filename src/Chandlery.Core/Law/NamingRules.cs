using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>Which substances the label names.</summary>
/// <param name="NormallyEnough">How many names besides sensitisers are normally enough; each class that asks for names has its chief cause named in any case.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record NamingRules(int NormallyEnough, Citation Clause);
