using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Bench;

/// <summary>The rule "one test a container": the first test on a container that was not opened before is the only one.</summary>
public static class OneTestAContainer
{
    public const string Rule = "one-test-a-container";

    public static Problem? Check(TestMethod method, Container container) =>
        method.OneTestPerContainer && container.Openings.Count > 0
            ? new Problem(
                "/containerNumber",
                $"Container {container.Number} has been opened already. {method.Designation} takes the first test on a container: use a sealed one.",
                Rule)
            : null;
}
