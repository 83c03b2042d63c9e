using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Records;

internal sealed class PerformedCommandConfiguration : IEntityTypeConfiguration<PerformedCommand>
{
    public void Configure(EntityTypeBuilder<PerformedCommand> command)
    {
        command.ToTable("commands");
        command.Property(c => c.Id).ValueGeneratedNever();
        command.Property(c => c.Name).HasMaxLength(Lengths.Name);
        command.Property(c => c.Subject).HasMaxLength(Lengths.Name);
    }
}
