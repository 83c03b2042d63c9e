using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Api;

/// <summary>Members that only other methods take.</summary>
internal static class MethodMembers
{
    public static void Check(Given body, TestMethod method)
    {
        // None of the methods in this build has procedures.
        if (body["procedure"].IsThere)
            body["procedure"].Refuse($"{method.Designation} has no procedures; leave it out.");
    }
}
