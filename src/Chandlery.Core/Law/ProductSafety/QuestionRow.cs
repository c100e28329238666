using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law.ProductSafety;

/// <summary>What follows from a yes to a question.</summary>
/// <param name="Question">The question.</param>
/// <param name="InForce">When it holds.</param>
/// <param name="Stops">Whether the candle must not be sold then.</param>
/// <param name="Says">What follows.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record QuestionRow(SafetyQuestion Question, InForce InForce, bool Stops, string Says, Citation Clause);
