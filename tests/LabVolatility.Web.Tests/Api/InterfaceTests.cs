using Xunit;

namespace LabVolatility.Web.Tests.Api;

/// <summary>Tests of one running laboratory, one after another.</summary>
[CollectionDefinition(Name)]
public sealed class InterfaceTests : ICollectionFixture<InterfaceScene>
{
    public const string Name = "interface";
}
