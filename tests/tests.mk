# Tests of the core against the world outside; included by the root Makefile.

ORACLE := target/oracle
TRACED := target/traced
REMOTE := target/remote

oracle: $(ORACLE)/ready ## Targets, verdicts, profiles, windows, pooled models and other evidence recomputed in Python by scipy, statsmodels, uncertainties and trimesh
	cargo run --quiet -p laydown-tests --example oracle_cases > $(ORACLE)/cases.json
	$(ORACLE)/venv/bin/python tests/oracle/oracle.py < $(ORACLE)/cases.json
	$(ORACLE)/venv/bin/python tests/oracle/profiles.py make > $(ORACLE)/profiles.json
	cargo run --quiet -p laydown-tests --example turned < $(ORACLE)/profiles.json > $(ORACLE)/turned.json
	$(ORACLE)/venv/bin/python tests/oracle/profiles.py check < $(ORACLE)/turned.json
	$(ORACLE)/venv/bin/python tests/oracle/windows.py make > $(ORACLE)/windows.json
	cargo run --quiet -p laydown-tests --example windows < $(ORACLE)/windows.json > $(ORACLE)/fitted.json
	$(ORACLE)/venv/bin/python tests/oracle/windows.py check < $(ORACLE)/fitted.json
	$(ORACLE)/venv/bin/python tests/oracle/pooled.py make > $(ORACLE)/pooled.json
	cargo run --quiet -p laydown-tests --example pooled < $(ORACLE)/pooled.json > $(ORACLE)/pooled_fits.json
	OMP_NUM_THREADS=1 $(ORACLE)/venv/bin/python tests/oracle/pooled.py check < $(ORACLE)/pooled_fits.json
	$(ORACLE)/venv/bin/python tests/oracle/evidence.py make > $(ORACLE)/evidence.json
	cargo run --quiet -p laydown-tests --example evidence < $(ORACLE)/evidence.json > $(ORACLE)/evidence_found.json
	$(ORACLE)/venv/bin/python tests/oracle/evidence.py check < $(ORACLE)/evidence_found.json
	$(ORACLE)/venv/bin/python tests/oracle/weighings.py make > $(ORACLE)/weighings.json
	cargo run --quiet -p laydown-tests --example weighings < $(ORACLE)/weighings.json > $(ORACLE)/weighed.json
	$(ORACLE)/venv/bin/python tests/oracle/weighings.py check < $(ORACLE)/weighed.json
	$(ORACLE)/venv/bin/python tests/oracle/mixing.py make > $(ORACLE)/mixing.json
	cargo run --quiet -p laydown-tests --example mixing < $(ORACLE)/mixing.json > $(ORACLE)/mixed.json
	$(ORACLE)/venv/bin/python tests/oracle/mixing.py check < $(ORACLE)/mixed.json

simulate: ## Targets in 500 invented studios, and in 200 that are steered by them: error, half-width, coverage, pots right
	cargo run --quiet -p laydown-tests --example simulate

photos: $(ORACLE)/ready ## Outlines in rendered photographs beside scikit-image's, kept photographs beside Pillow's, a PDF drawn by PDFium
	rm -rf target/photos
	$(ORACLE)/venv/bin/python tests/photos/render.py target/photos 100
	cargo run --quiet -p laydown-tests --example trace_photos -- target/photos > target/photos/outlines.json
	$(ORACLE)/venv/bin/python tests/photos/check.py target/photos < target/photos/outlines.json
	rm -rf target/pictures
	$(ORACLE)/venv/bin/python tests/photos/pictures.py target/pictures
	cargo run --quiet -p laydown-tests --example develop_photos -- target/pictures > target/developed.json
	$(ORACLE)/venv/bin/python tests/photos/developed.py target/pictures < target/developed.json
	rm -rf target/pages
	$(ORACLE)/venv/bin/python tests/photos/pdf.py make target/pages
	cargo run --quiet -p laydown-tests --example bound_pages -- target/pages/bound.pdf target/pages/page1.jpg target/pages/page2.jpg
	$(ORACLE)/venv/bin/python tests/photos/pdf.py check target/pages

$(TRACED)/ready: tests/photos/path_traced/requirements.txt
	@ldconfig -p | grep -q 'libLLVM[.-]19' || tools/need.sh no-such-command:libllvm19
	python3 -m venv $(TRACED)/venv || { echo "Python's venv is missing. Type: apt-get install -y python3-venv"; exit 1; }
	$(TRACED)/venv/bin/pip install --quiet --disable-pip-version-check --requirement $<
	touch $@

# Ten seconds a picture. Not a part of `make test`: what it measures is not met yet (see DEVELOPERS.md).
photos-traced: $(TRACED)/ready ## Outlines in photographs by another renderer, a path tracer: right, wrong or refused, and a sheet of them to look at
	rm -rf target/photos_traced
	$(TRACED)/venv/bin/python tests/photos/path_traced/scenes.py target/photos_traced 5000 24 6 10
	cargo run --quiet -p laydown-tests --example trace_photos -- target/photos_traced > target/photos_traced/outlines.json
	$(TRACED)/venv/bin/python tests/photos/path_traced/measure.py target/photos_traced < target/photos_traced/outlines.json

backup: ## A backup, the journal and the tables read by Python alone, as a stranger would
	rm -rf target/backup
	cargo run --quiet -p laydown-tests --example sample_backup -- target/backup
	python3 tests/backup/read.py target/backup

import: ## Sheets as Python's csv module writes them, and what came in of them
	rm -rf target/import
	python3 tests/import/write.py make target/import
	cargo run --quiet -p laydown-tests --example import_sheets -- target/import
	python3 tests/import/write.py check target/import

$(ORACLE)/ready: tests/oracle/requirements.txt
	mkdir -p $(ORACLE)
	python3 -m venv $(ORACLE)/venv || { echo "Python's venv is missing. Type: apt-get install -y python3-venv"; exit 1; }
	$(ORACLE)/venv/bin/pip install --quiet --disable-pip-version-check --requirement tests/oracle/requirements.txt
	touch $@

remote: $(REMOTE)/ready ## Studios kept alike through a folder, a WebDAV and an S3 server that are started, killed and restarted
	cargo test -p laydown-tests --test sync

$(REMOTE)/ready: tests/remote/requirements.txt
	mkdir -p $(REMOTE)
	python3 -m venv $(REMOTE)/venv || { echo "Python's venv is missing. Type: apt-get install -y python3-venv"; exit 1; }
	$(REMOTE)/venv/bin/pip install --quiet --disable-pip-version-check --requirement tests/remote/requirements.txt
	touch $@

bench: ## Each figure beside its peer, in the same run
	cargo build --quiet --release --locked --manifest-path tests/peers/Cargo.toml --target-dir target/peers
	cargo bench --quiet -p laydown-tests --bench bench

# Minutes that make fuzz looks for, over all targets.
MINUTES ?= 20
FUZZ := target/fuzz

fuzz: $(FUZZ)/ready ## Hostile phones, servers and files, then hostile bytes under libFuzzer, for about MINUTES=20
	cargo run --quiet -p laydown-fuzz --example seeds -- $(FUZZ)/corpus > $(FUZZ)/names
	HISTORIES=2000 cargo test --quiet -p laydown-tests --test store histories::
	LAYDOWN_ADVERSARY=$$(( $(MINUTES) * 6 )) cargo test --quiet -p laydown-tests --test sync hostile::whatever
	LAYDOWN_HOSTILE_MB=10 cargo test --quiet -p laydown-fuzz --test hostile
	@seconds=$$(( $(MINUTES) * 40 / $$(wc -l < $(FUZZ)/names) )); \
	for name in $$(cat $(FUZZ)/names); do \
	  echo "$$name, for $$seconds s"; \
	  mkdir -p $(FUZZ)/found tests/fuzz/corpus/$$name; \
	  LAYDOWN_FUZZ=$$name $(FUZZ)/$$(rustc -vV | sed -n 's/^host: //p')/release/target $(FUZZ)/corpus/$$name tests/fuzz/corpus/$$name \
	    -max_total_time=$$seconds -max_len=65536 -timeout=120 -rss_limit_mb=1024 -print_final_stats=1 \
	    -artifact_prefix=$(FUZZ)/found/$$name- 2> $(FUZZ)/$$name.log \
	    || { tail -n 40 $(FUZZ)/$$name.log; exit 1; }; \
	  grep -E "number_of_executed_units|peak_rss_mb" $(FUZZ)/$$name.log; \
	done

# No sanitizer: there is no unsafe code to look into, and libFuzzer's own marks are there in the stable compiler.
$(FUZZ)/ready: $(shell find core tests/fuzz -name '*.rs') tests/fuzz/libfuzzer/Cargo.toml
	cargo fuzz --version > /dev/null || { echo "cargo-fuzz is missing. Type: cargo install --locked cargo-fuzz"; exit 1; }
	cd tests/fuzz/libfuzzer && cargo fuzz build --fuzz-dir . --sanitizer none --target-dir ../../../$(FUZZ) target
	touch $@

advisories: ## Known holes, licences and sources of all dependencies, by cargo-deny; fetches RustSec's database
	cargo deny --version > /dev/null || { echo "cargo-deny is missing. Type: cargo install --locked cargo-deny"; exit 1; }
	cargo deny check
	cargo deny --manifest-path tests/peers/Cargo.toml --config deny.toml check advisories

.PHONY: advisories oracle simulate photos photos-traced backup import remote bench fuzz
