using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Bench;

internal sealed class TakenOnConfiguration : IEntityTypeConfiguration<TakenOn>
{
    public void Configure(EntityTypeBuilder<TakenOn> takenOn)
    {
        takenOn.ToTable("taken_ons");
        takenOn.HasKey(t => t.DeterminationId);
        takenOn.Property(t => t.DeterminationId).ValueGeneratedNever();
        takenOn.HasOne<Person>().WithMany().HasForeignKey(t => t.PersonId);
    }
}
