using System.Data.Common;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Web.People;
using LabVolatility.Web.Setup;
using Microsoft.AspNetCore.Identity;

namespace LabVolatility.Web.Commands;

/// <summary>The laboratory's use cases for a command, on the database that the environment names.</summary>
internal static class CommandServices
{
    /// <summary>Does something with the use cases; what the database says against it becomes a refusal in words.</summary>
    public static async Task<T> WithAsync<T>(CommandWorld world, Func<IServiceProvider, StorageOptions, Task<T>> act)
    {
        var options = Options(world);
        var services = new ServiceCollection();
        services.AddLogging(logging => logging.SetMinimumLevel(LogLevel.Warning)
            .AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace));
        services.AddLabStorage(options);
        services.AddUseCases(demoKey: null);
        services.AddSingleton<IPasswordHasher<Person>, PasswordHasher<Person>>();
        services.Configure<PasswordHasherOptions>(hashing => hashing.IterationCount = SignInServices.PasswordRounds);
        await using var provider = services.BuildServiceProvider();
        try
        {
            return await act(provider, options);
        }
        catch (DbException fault)
        {
            throw new CommandRefusedException($"The database refuses: {fault.Message}");
        }
        catch (InvalidOperationException fault)
        {
            throw new CommandRefusedException(fault.Message);
        }
    }

    private static StorageOptions Options(CommandWorld world)
    {
        try
        {
            return StorageOptions.From(world.Setting);
        }
        catch (InvalidOperationException wrong)
        {
            throw new CommandRefusedException(wrong.Message);
        }
    }
}
