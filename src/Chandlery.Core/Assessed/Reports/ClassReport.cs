using Chandlery.Core.Classified;

namespace Chandlery.Core.Assessed.Reports;

internal sealed record ClassReport(string Class, string Category, string Statement, Working Working);
