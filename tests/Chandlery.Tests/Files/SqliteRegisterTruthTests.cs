using Chandlery.Tests.Support;

namespace Chandlery.Tests.Files;

/// <summary>The same in a file.</summary>
public sealed class SqliteRegisterTruthTests() : RegisterTruthTests(new SqliteTestStore());
