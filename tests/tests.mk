# Tests of the core against the world outside; included by the root Makefile.

ORACLE := target/oracle

oracle: $(ORACLE)/ready ## Targets and verdicts recomputed in Python by scipy and uncertainties
	cargo run --quiet -p laydown-tests --example oracle_cases > $(ORACLE)/cases.json
	$(ORACLE)/venv/bin/python tests/oracle/oracle.py < $(ORACLE)/cases.json

photos: $(ORACLE)/ready ## Outlines found in rendered photographs of known pots, beside scikit-image's
	rm -rf target/photos
	$(ORACLE)/venv/bin/python tests/photos/render.py target/photos 100
	cargo run --quiet -p laydown-tests --example trace_photos -- target/photos > target/photos/outlines.json
	$(ORACLE)/venv/bin/python tests/photos/check.py target/photos < target/photos/outlines.json

$(ORACLE)/ready: tests/oracle/requirements.txt
	mkdir -p $(ORACLE)
	python3 -m venv $(ORACLE)/venv || { echo "Python's venv is missing. Type: apt-get install -y python3-venv"; exit 1; }
	$(ORACLE)/venv/bin/pip install --quiet --disable-pip-version-check --requirement tests/oracle/requirements.txt
	touch $@

bench: ## Each figure beside its peer, in the same run
	cargo bench --quiet -p laydown-tests --bench bench

.PHONY: oracle photos bench
